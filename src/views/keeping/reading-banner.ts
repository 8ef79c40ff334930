import { html, LitElement, nothing, type TemplateResult } from "lit";
import { tell } from "../notice.ts";
import type { Keeping } from "./keeping.ts";
import { guardReading } from "./reading-gate.ts";
import { words } from "./words.ts";

/** Below the bar, while another tab edits the notebook: that it can only be read here, and what can be done about it. */
export class ReadingBanner extends LitElement {
  static override properties = { keeping: { attribute: false } };
  declare keeping: Keeping;
  private stops: (() => void)[] = [];
  private wasTaking = false;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    const app = this.closest<HTMLElement>("spanwise-app") ?? document.body;
    const { session } = this.keeping.app;
    const follow = (): void => {
      app.toggleAttribute("data-reading", session.readOnly);
      this.requestUpdate();
    };
    const guard = guardReading(
      app,
      () => session.readOnly,
      () => tell(words.onlyRead),
    );
    this.stops = [this.keeping.onChange(follow), guard];
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    for (const stop of this.stops) stop();
  }

  protected override render(): TemplateResult {
    const { keeping } = this;
    const sentence = this.sentence;
    const canAct = sentence !== null && keeping.open?.phase === "reading";
    return html`<p role="status">${sentence ?? nothing}</p>
      ${canAct && !keeping.hasLostEdits ? html`<button type="button" @click=${this.take}>${words.editHere}</button>` : nothing}
      ${canAct ? html`<button type="button" @click=${this.copy}>${words.editCopy}</button>` : nothing}`;
  }

  private get sentence(): string | null {
    const { open, hasLostEdits, hasGiven } = this.keeping;
    if (!open || open.phase === "writing") return null;
    if (open.phase === "taking") return words.taking;
    return hasLostEdits ? words.lost : hasGiven ? words.given : words.reading;
  }

  protected override updated(): void {
    this.classList.toggle("speaks", this.sentence !== null);
    const phase = this.keeping.open?.phase;
    const isReading = this.keeping.app.session.readOnly;
    if (this.wasReading && phase === "writing" && !isReading) tell(words.yours);
    // The button that had the focus is gone.
    if (this.wasTaking && phase !== "taking" && document.activeElement === document.body) this.focusPage();
    this.wasTaking = phase === "taking";
    this.wasReading = isReading;
  }

  private wasReading = false;

  private readonly take = (): void => this.keeping.takeOver();

  private readonly copy = async (): Promise<void> => {
    this.wasReading = false;
    await this.keeping.openCopy();
    this.focusPage();
  };

  private focusPage(): void {
    document.getElementById("page")?.focus({ preventScroll: true });
  }
}
