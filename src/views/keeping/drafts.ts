import type { Notebook, Session } from "../../cells/index.ts";
import type { Draft } from "./shelf.ts";

type Edit = (notebook: Notebook) => Notebook;

/**
 * What is typed but has not taken effect in the notebook: a text that the editor holds back, and answers to questions
 * that are not given yet. It is kept all the same, so that a crash does not cost it.
 */
export class Drafts {
  private held: Edit | null = null;
  private written: Readonly<Record<string, Draft>> = {};
  private readonly listeners = new Set<() => void>();

  /** Begins anew, for another notebook. */
  reset(answers: Readonly<Record<string, Draft>> = {}): void {
    this.held = null;
    this.written = answers;
  }

  /** The edit that leaving the editor now would be; null where what is typed has taken effect. */
  hold(edit: Edit | null): void {
    if (edit === null && this.held === null) return;
    this.held = edit;
    this.tell();
  }

  /** The answer that is being written to a question. */
  answer(question: string): Draft {
    return (Object.hasOwn(this.written, question) && this.written[question]) || { answer: "", reason: "" };
  }

  setAnswer(question: string, draft: Draft): void {
    const { [question]: _, ...others } = this.written;
    const isEmpty = draft.answer === "" && draft.reason === "";
    this.written = isEmpty ? others : { ...others, [question]: draft };
    this.tell();
  }

  /** All answers that are being written, by question. */
  get answers(): Readonly<Record<string, Draft>> {
    return this.written;
  }

  /** True where everything that is typed has taken effect. */
  get areEmpty(): boolean {
    return this.held === null && Object.keys(this.written).length === 0;
  }

  /** The notebook as it would be kept if the editor were left now. */
  appliedTo(session: Pick<Session, "own" | "afterEdit">): Notebook {
    try {
      return this.held ? session.afterEdit(this.held) : session.own;
    } catch {
      // The cell that it was typed in is gone.
      return session.own;
    }
  }

  /** Calls back at each change. Gives what ends it. */
  onChange(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  private tell(): void {
    for (const listener of this.listeners) listener();
  }
}
