import { html, LitElement, nothing, type TemplateResult } from "lit";

/** How long a notice stands, in ms; what it tells of can be undone all the same afterwards. */
const standing = 8000;

/** Tells shortly, at the foot of the screen and to screen readers, what has just been done. */
export class Notice extends LitElement {
  static override properties = { text: { state: true } };
  declare private text: string;
  private timer = 0;

  constructor() {
    super();
    this.text = "";
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.role = "status";
    window.addEventListener("tell", this.tell as EventListener);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener("tell", this.tell as EventListener);
  }

  protected override render(): TemplateResult | typeof nothing {
    return this.text === "" ? nothing : html`<p>${this.text}</p>`;
  }

  private readonly tell = ({ detail }: CustomEvent<string>): void => {
    this.text = detail;
    clearTimeout(this.timer);
    this.timer = window.setTimeout(() => {
      this.text = "";
    }, standing);
  };
}

/** Says a sentence at the foot of the screen. */
export const tell = (text: string): void => {
  window.dispatchEvent(new CustomEvent("tell", { detail: text }));
};
