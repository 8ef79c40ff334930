/** The one live formula editor. Loaded on its own, after the page. */
import {
  acceptCompletion,
  autocompletion,
  closeCompletion,
  completionKeymap,
  completionStatus,
  currentCompletions,
  moveCompletionSelection,
  selectedCompletion,
  selectedCompletionIndex,
} from "@codemirror/autocomplete";
import { history, historyKeymap, insertNewline, standardKeymap } from "@codemirror/commands";
import { bracketMatching, LRLanguage, syntaxHighlighting, syntaxTree } from "@codemirror/language";
import { EditorSelection, EditorState, type Extension, Prec, StateEffect, StateField } from "@codemirror/state";
import { Decoration, type DecorationSet, EditorView, keymap, WidgetType } from "@codemirror/view";
import type { SyntaxNode } from "@lezer/common";
import { parser } from "../cells/index.ts";
import type { Caret, Fault, Leaving } from "./entering.ts";
import { type CompletionScope, completeFormula } from "./formula-completion.ts";
import { formulaEditorTheme } from "./formula-editor-theme.ts";
import { formulaHighlighter, widened } from "./formula-highlight.ts";

export interface FormulaEditorOptions {
  /** Its accessible name. */
  readonly label: string;
  readonly text: string;
  /** What can be completed; null for plain text, which has no highlighting either. */
  readonly scope: CompletionScope | null;
  onText(text: string): void;
  onLeave(by: Leaving, text: string): void;
  onStep(direction: -1 | 1, text: string): boolean;
  onTab(direction: -1 | 1, text: string): boolean;
}

export interface FormulaEditor {
  /** Marks the faulty term, or none. */
  mark(fault: Fault | null): void;
  focus(caret: Caret): void;
  /** Puts a text in the place of what is selected, as if it were typed. */
  type(text: string): void;
  /** The name of the function that the completion offers first, else of the call around the caret, else null. */
  called(): string | null;
  close(): void;
}

/** Opens an editor in a shadow root, which gets its styles. */
export function openFormulaEditor(root: ShadowRoot, options: FormulaEditorOptions): FormulaEditor {
  const { text, scope, onText } = options;
  const view = new EditorView({
    root,
    parent: root,
    state: EditorState.create({
      doc: text,
      extensions: [
        Prec.high(keymap.of(keysOf(options))),
        history(),
        keymap.of([...standardKeymap, ...historyKeymap]),
        EditorView.lineWrapping,
        scope ? formulaExtensions(scope) : [],
        faultField,
        formulaEditorTheme,
        EditorView.contentAttributes.of((of) => contentAttributes(options.label, of)),
        EditorView.updateListener.of((update) => {
          if (update.docChanged) onText(update.state.doc.toString());
        }),
        EditorView.domEventHandlers({
          beforeinput: replaceByText,
          // Another window in front is no reason to end, nor is the reference, which gives the focus back.
          blur: (_, of) => {
            if (document.hasFocus() && !document.querySelector("dialog.reference[open]"))
              options.onLeave("away", textOf(of));
          },
        }),
      ],
    }),
  });
  return {
    mark: (fault) => view.dispatch({ effects: setFault.of(fault) }),
    focus(caret) {
      const { length } = view.state.doc;
      const selection =
        caret === "all" ? EditorSelection.single(0, length) : EditorSelection.single(Math.min(caret, length));
      view.dispatch({ selection });
      view.focus();
    },
    type: (typed) => view.dispatch(view.state.replaceSelection(typed), { userEvent: "input.type" }),
    called: () => selectedCompletion(view.state)?.label ?? callAround(view.state),
    close: () => view.destroy(),
  };
}

/** The innermost call whose name or brackets hold the caret. */
function callAround(state: EditorState): string | null {
  const { head } = state.selection.main;
  for (const side of [-1, 1] as const) {
    let node: SyntaxNode | null = syntaxTree(state).resolveInner(head, side);
    while (node && node.name !== "Call") node = node.parent;
    const name = node?.firstChild;
    if (name) return state.sliceDoc(name.from, name.to);
  }
  return null;
}

/**
 * Text put over a selection. Left to itself the browser keeps the look of what it replaces by a style attribute, which
 * the page's policy forbids.
 */
function replaceByText(event: InputEvent, view: EditorView): boolean {
  const isText = event.inputType === "insertText" || event.inputType === "insertReplacementText";
  if (!isText || event.isComposing || view.composing || event.data === null) return false;
  const { from, to } = selectedIn(view);
  if (from === to) return false;
  event.preventDefault();
  view.dispatch({
    changes: { from, to, insert: event.data },
    selection: { anchor: from + event.data.length },
    userEvent: "input.type",
    scrollIntoView: true,
  });
  return true;
}

/** What is selected on the page now: the editor hears of it a little later. */
function selectedIn(view: EditorView): { from: number; to: number } {
  const root = view.root as ShadowRoot & Partial<Pick<Document, "getSelection">>;
  const selection = (root.getSelection ? root.getSelection() : document.getSelection()) ?? null;
  const { main } = view.state.selection;
  if (!selection?.anchorNode || !selection.focusNode || !view.contentDOM.contains(selection.anchorNode)) return main;
  const anchor = view.posAtDOM(selection.anchorNode, selection.anchorOffset);
  const head = view.posAtDOM(selection.focusNode, selection.focusOffset);
  return { from: Math.min(anchor, head), to: Math.max(anchor, head) };
}

const textOf = (view: EditorView): string => view.state.doc.toString();

const language = LRLanguage.define({ name: "formula", parser });

const formulaExtensions = (scope: CompletionScope): Extension => [
  Prec.highest(keymap.of(completionKeymap.filter(({ key }) => key !== "Escape"))),
  language,
  syntaxHighlighting(formulaHighlighter),
  bracketMatching({ brackets: "()[]" }),
  autocompletion({
    override: [completeFormula(scope)],
    // Enter commits what was typed; only what was chosen with the arrows, or by Tab, is put in.
    selectOnOpen: false,
    interactionDelay: 0,
    defaultKeymap: false,
    icons: false,
    maxRenderedOptions: 80,
  }),
];

function keysOf({ onLeave, onStep, onTab }: FormulaEditorOptions) {
  const leave = (by: Leaving) => (view: EditorView) => {
    onLeave(by, textOf(view));
    return true;
  };
  return [
    { key: "Enter", run: leave("enter"), shift: insertNewline },
    // A list that is still being looked for is not in the way.
    {
      key: "Escape",
      run: (view: EditorView) =>
        completionStatus(view.state) === "active" ? closeCompletion(view) : leave("escape")(view),
    },
    {
      key: "Tab",
      run: (view: EditorView) => takeCompletion(view) || onTab(1, textOf(view)),
      shift: (view: EditorView) => onTab(-1, textOf(view)),
    },
    { key: "ArrowUp", run: (view: EditorView) => onStep(-1, textOf(view)) },
    { key: "ArrowDown", run: (view: EditorView) => onStep(1, textOf(view)) },
  ];
}

/** Tab takes the first completion in the list, unless what stands there is it already; then it goes on to the next field. */
function takeCompletion(view: EditorView): boolean {
  if (completionStatus(view.state) !== "active") return false;
  if (selectedCompletionIndex(view.state) === null || selectedCompletionIndex(view.state) === -1) {
    const [first] = currentCompletions(view.state);
    const { head } = view.state.selection.main;
    const before = view.state.sliceDoc(Math.max(0, head - 100), head);
    if (!first || before.endsWith(first.label)) return false;
    moveCompletionSelection(true)(view);
  }
  return acceptCompletion(view);
}

const setFault = StateEffect.define<Fault | null>();

interface Marked {
  readonly fault: Fault | null;
  readonly marks: DecorationSet;
}

const faultField = StateField.define<Marked>({
  create: () => ({ fault: null, marks: Decoration.none }),
  update(before, transaction) {
    let { fault, marks } = before;
    if (transaction.docChanged) marks = marks.map(transaction.changes);
    for (const effect of transaction.effects) {
      if (!effect.is(setFault)) continue;
      fault = effect.value;
      marks = fault ? marksOf(fault, transaction.state.doc.length) : Decoration.none;
    }
    return fault === before.fault && marks === before.marks ? before : { fault, marks };
  },
  provide: (field) => EditorView.decorations.from(field, ({ marks }) => marks),
});

function marksOf({ at, waits }: Fault, length: number): DecorationSet {
  const [from, to] = widened(at, length);
  const look = waits ? "awaited" : "faulty";
  if (from < to) return Decoration.set(Decoration.mark({ class: look }).range(from, to));
  return Decoration.set(Decoration.widget({ widget: new MissingTerm(look), side: 1 }).range(from));
}

/** Stands where a term is missing at the end. */
class MissingTerm extends WidgetType {
  constructor(private readonly look: string) {
    super();
  }
  override eq(other: MissingTerm): boolean {
    return other.look === this.look;
  }
  toDOM(): HTMLElement {
    const space = document.createElement("span");
    space.className = `${this.look} at-end`;
    space.textContent = " ";
    space.ariaHidden = "true";
    return space;
  }
}

function contentAttributes(label: string, view: EditorView): Record<string, string> {
  const { fault } = view.state.field(faultField);
  return {
    "aria-label": label,
    "aria-multiline": "false",
    autocapitalize: "off",
    spellcheck: "false",
    ...(fault && { "aria-invalid": "true", "aria-description": fault.message }),
  };
}
