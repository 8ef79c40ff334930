import { html, LitElement, nothing, type TemplateResult } from "lit";
import { tell } from "../notice.ts";
import type { Keeper } from "./keeper.ts";
import type { Keeping } from "./keeping.ts";
import { guardReading } from "./reading-gate.ts";
import { words } from "./words.ts";

/** Below the bar, while another tab edits the notebook: why it can only be read here, and what can be done. */
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
    const say = (): void => tell(this.keeping.open?.phase === "free" ? words.onlyReadFree : words.onlyRead);
    const follow = (): void => {
      app.toggleAttribute("data-reading", session.readOnly);
      this.requestUpdate();
    };
    this.stops = [this.keeping.onChange(follow), guardReading(app, () => session.readOnly, say)];
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    for (const stop of this.stops) stop();
  }

  protected override render(): TemplateResult {
    const { open } = this.keeping;
    const sentence = open && sentenceFor(open);
    const canTake = sentence && open.phase !== "taking" && !open.hasLostEdits;
    const canCopy = sentence && open.phase !== "taking";
    return html`<p role="status">${sentence ?? nothing}</p>
      ${canTake ? html`<button type="button" class="take" @click=${this.take}>${words.editHere}</button>` : nothing}
      ${canCopy ? html`<button type="button" @click=${this.copy}>${words.editCopy}</button>` : nothing}`;
  }

  protected override updated(): void {
    const { open } = this.keeping;
    const phase = open?.phase;
    const isDone = this.wasTaking && phase === "writing" && !this.keeping.app.session.readOnly;
    if (isDone) tell(words.yours);
    // The button that had the focus is gone.
    if (document.activeElement === document.body && (isDone || this.wasTaking)) this.focusPage();
    if (phase !== "taking" && (isDone || phase !== "writing")) this.wasTaking = false;
  }

  private readonly take = (): void => {
    this.wasTaking = true;
    this.keeping.open?.takeOver();
  };

  private readonly copy = async (): Promise<void> => {
    await this.keeping.copy();
    this.focusPage();
  };

  private focusPage(): void {
    document.getElementById("page")?.focus({ preventScroll: true });
  }
}

function sentenceFor({ phase, hasLostEdits, hasWritten }: Keeper): string | null {
  switch (phase) {
    case "reading":
      return hasLostEdits ? words.lost : hasWritten ? words.given : words.reading;
    case "free":
      return hasLostEdits ? words.lost : words.free;
    case "taking":
      return words.taking;
    case "asking":
    case "writing":
    case "giving":
    case "closed":
      return null;
  }
}
