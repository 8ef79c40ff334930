import { html, LitElement, nothing, type TemplateResult } from "lit";
import { ago } from "./ago.ts";
import type { Keeping } from "./keeping.ts";
import { words } from "./words.ts";

/** In the bar: when the notebook was kept last, or that it is not kept. It is not read out as time goes by. */
export class KeptLine extends LitElement {
  static override properties = { keeping: { attribute: false } };
  declare keeping: Keeping;
  private stops: (() => void)[] = [];
  private timer = 0;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    const update = (): void => this.requestUpdate();
    document.addEventListener("visibilitychange", update);
    this.stops = [this.keeping.onChange(update), () => document.removeEventListener("visibilitychange", update)];
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.timer);
    for (const stop of this.stops) stop();
  }

  protected override render(): TemplateResult | typeof nothing {
    clearTimeout(this.timer);
    const { open } = this.keeping;
    if (!open) return nothing;
    if (!open.holds) {
      return html`<p class="kept not" title=${words.notKeptHint}><span aria-hidden="true">✕</span> ${words.notKept}</p>`;
    }
    if (open.keptAt === null) return nothing;
    const { text, holds } = ago(open.keptAt, Date.now());
    this.updateAfter(holds);
    return html`<p class="kept" title=${words.keptHint}>${words.kept(text)}</p>`;
  }

  private updateAfter(ms: number): void {
    if (Number.isFinite(ms) && !document.hidden) this.timer = window.setTimeout(() => this.requestUpdate(), ms);
  }
}
