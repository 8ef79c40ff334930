import { css, html, LitElement } from "lit";
import type { Caret, Fault, Leaving } from "./entering.ts";
import type { CompletionScope } from "./formula-completion.ts";
import type { FormulaEditor } from "./formula-editor.ts";

/** Loads the editor ahead of its first use. It is a piece of its own, so that the page opens without it. */
export const loadEditor = (): Promise<typeof import("./formula-editor.ts")> => import("./formula-editor.ts");

/**
 * A formula while it is entered. Its shadow root is what the editor puts its styles into, under the page's policy. Only
 * one is on the page at a time.
 */
export class FormulaEntry extends LitElement {
  static override properties = {
    label: { attribute: false },
    text: { attribute: false },
    caret: { attribute: false },
    fault: { attribute: false },
    scope: { attribute: false },
  };
  static override styles = css`
    :host { display: block; min-width: 0; outline: none; }
    code { font: inherit; white-space: pre-wrap; overflow-wrap: anywhere; }
  `;
  declare label: string;
  /** The text at first; what is typed is told by `onText`. */
  declare text: string;
  declare caret: Caret;
  declare fault: Fault | null;
  /** What can be completed; null for plain text. */
  declare scope: CompletionScope | null;
  /** Called at each change of the text. */
  onText: (text: string) => void = () => undefined;
  onLeave: (by: Leaving, text: string) => void = () => undefined;
  /** Called for the keys Up and Down; true where the key is used up. */
  onStep: (direction: -1 | 1, text: string) => boolean = () => false;
  /** Called for Tab and Shift-Tab; true where the key is used up. */
  onTab: (direction: -1 | 1, text: string) => boolean = () => false;

  private editor: FormulaEditor | null = null;
  /** What is typed before the editor is there. */
  private early = "";

  constructor() {
    super();
    this.addEventListener("keydown", (event) => this.keepEarly(event));
  }

  protected override render() {
    return this.editor ? undefined : html`<code>${this.text}</code>`;
  }

  protected override async firstUpdated(): Promise<void> {
    this.tabIndex = -1;
    this.focus();
    const { openFormulaEditor } = await loadEditor();
    if (!this.isConnected) return;
    const root = this.renderRoot as ShadowRoot;
    root.replaceChildren();
    this.removeAttribute("tabindex");
    this.editor = openFormulaEditor(root, {
      label: this.label,
      text: this.text,
      scope: this.scope,
      onText: (text) => this.onText(text),
      onLeave: (by, text) => this.onLeave(by, text),
      onStep: (direction, text) => this.onStep(direction, text),
      onTab: (direction, text) => this.onTab(direction, text),
    });
    this.editor.mark(this.fault);
    this.editor.focus(this.caret);
    if (this.early !== "") this.editor.type(this.early);
  }

  /** The function that is called where the caret stands, or that is about to be put in; null where there is none. */
  get called(): string | null {
    return this.editor?.called() ?? null;
  }

  private keepEarly(event: KeyboardEvent): void {
    if (this.editor || event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === "Backspace") this.early = this.early.slice(0, -1);
    else if (event.key.length === 1) this.early += event.key;
    else return;
    event.preventDefault();
  }

  /** Once the editor is there the template has nothing more to draw. */
  protected override shouldUpdate(): boolean {
    this.editor?.mark(this.fault);
    return this.editor === null;
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.editor?.close();
    this.editor = null;
  }
}

/** The character of a formula at rest that a click came down on; its length where that is past the end. */
export function characterAt(formula: Element, { clientX, clientY }: MouseEvent): number {
  const found = pointAt(clientX, clientY);
  const walker = document.createTreeWalker(formula, NodeFilter.SHOW_TEXT);
  let before = 0;
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    if (node === found?.node) return before + found.offset;
    before += node.textContent?.length ?? 0;
  }
  return before;
}

function pointAt(x: number, y: number): { node: Node; offset: number } | null {
  if ("caretPositionFromPoint" in document) {
    const position = document.caretPositionFromPoint(x, y);
    return position && { node: position.offsetNode, offset: position.offset };
  }
  const range = (document as Document).caretRangeFromPoint?.(x, y);
  return range ? { node: range.startContainer, offset: range.startOffset } : null;
}
