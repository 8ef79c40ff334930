import { html, LitElement, nothing, type TemplateResult } from "lit";

/** How long a notice stands, in ms; what it offers can be had all the same afterwards, by the bar. */
const standing = 8000;

/** A sentence about what has just been done, and what may be done about it. */
interface Told {
  readonly text: string;
  readonly offer: Offer | null;
}

/** A button in a notice. */
export interface Offer {
  readonly label: string;
  act(): void;
}

/** Tells shortly, at the foot of the screen and to screen readers, what has just been done. */
export class Notice extends LitElement {
  static override properties = { told: { state: true } };
  declare private told: Told | null;
  private timer = 0;

  constructor() {
    super();
    this.told = null;
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener("tell", this.tell as EventListener);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener("tell", this.tell as EventListener);
  }

  /** It stays while the pointer or the focus is on it. */
  protected override render(): TemplateResult {
    const { told } = this;
    return html`<div class="notice ${told ? "" : "over"}" @pointerenter=${this.hold} @pointerleave=${this.wait}
      @focusin=${this.hold} @focusout=${this.wait}>
      <p role="status">${told?.text ?? ""}</p>${told?.offer ? this.renderOffer(told.offer) : nothing}</div>`;
  }

  private renderOffer({ label, act }: Offer): TemplateResult {
    const take = (): void => {
      this.told = null;
      act();
    };
    return html`<button type="button" @click=${take}>${label}</button>`;
  }

  private readonly tell = ({ detail }: CustomEvent<Told>): void => {
    this.told = detail;
    this.wait();
  };

  private readonly hold = (): void => clearTimeout(this.timer);

  private readonly wait = (): void => {
    clearTimeout(this.timer);
    this.timer = window.setTimeout(() => {
      this.told = null;
    }, standing);
  };
}

/** Says a sentence at the foot of the screen, and may offer something. */
export const tell = (text: string, offer: Offer | null = null): void => {
  window.dispatchEvent(new CustomEvent("tell", { detail: { text, offer } }));
};
