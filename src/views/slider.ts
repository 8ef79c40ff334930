import { html, svg, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { formulaAt, type Track } from "./literal.ts";

export interface SliderOptions {
  readonly label: string;
  readonly track: Track;
  readonly position: number;
  /** Where it stood when the notebook was opened; null where it was not there. */
  readonly baseline: number | null;
  onSlide(position: number): void;
  /** The knob was let go. */
  onRelease(): void;
}

/** A line with ticks at its quarters and at the baseline, its ends labelled, over it the knob of a native range. */
export function slider({ label, track, position, baseline, onSlide, onRelease }: SliderOptions): TemplateResult {
  const share = (at: number): number => Math.min(1, Math.max(0, (at - track.from) / (track.to - track.from)));
  const percent = (at: number): string => `${(100 * at).toFixed(3)}%`;
  const moved = baseline !== null && Math.abs(position - baseline) > 1e-9 * Math.max(Math.abs(position), track.step);
  const slide = (event: Event): void => onSlide((event.target as HTMLInputElement).valueAsNumber);
  return html`<div class="slider${moved ? " moved" : ""}">
    <span class="end" aria-hidden="true">${formulaAt({ ...track, unit: "1" }, track.from)}</span>
    <span class="track">
      <svg aria-hidden="true" focusable="false">
        <line class="way" x1="0" x2="100%" y1="50%" y2="50%"></line>
        ${[0.25, 0.5, 0.75].map((at) => svg`<line class="quarter" x1=${percent(at)} x2=${percent(at)} y1="5" y2="13"></line>`)}
        ${baseline === null ? "" : svg`<line class="start" x1=${percent(share(baseline))} x2=${percent(share(baseline))} y1="3" y2="15"></line>`}
      </svg>
      <input type="range" aria-label=${label} aria-valuetext=${formulaAt(track, position)} min=${track.from} max=${track.to}
        step=${track.step} .value=${live(String(position))} @input=${slide} @change=${onRelease} />
    </span>
    <span class="end" aria-hidden="true">${formulaAt(track, track.to)}</span>
  </div>`;
}
