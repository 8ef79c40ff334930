import { html, svg, type TemplateResult } from "lit";
import type { Result } from "../cells/index.ts";
import { gapText } from "./value-text.ts";
import { words } from "./words.ts";

type Ok = Extract<Result, { readonly ok: true }>;

/** Whether a check holds, by a sign, a word and a bar: how much of the limit is used, or hatched where it is passed. */
export function checkValue({ value, margin }: Ok): TemplateResult {
  const gap = margin ? gapText(margin) : null;
  if (value !== true) {
    return html`<span class="verdict fails"><span aria-hidden="true">✕</span><span class="unseen">${words.fails}</span>
      ${gap === null ? words.fails : words.failsBy(gap)}</span> <span class="bar hatched" aria-hidden="true"></span>`;
  }
  const share = margin?.share;
  return html`<span class="verdict holds"><span aria-hidden="true">✓</span> ${words.holds}</span>
    ${share === null || share === undefined ? "" : bar(1 - Math.min(1, Math.max(0, share)))}
    ${gap === null ? "" : html`<span class="spare">${words.toSpare(gap)}</span>`}`;
}

const bar = (used: number): TemplateResult =>
  html`<svg class="bar" aria-hidden="true" focusable="false">${svg`<rect width="${(100 * used).toFixed(1)}%" height="100%"></rect>`}</svg>`;
