import { html, type TemplateResult } from "lit";
import { type Outcome, type StudyCell, studyText } from "../cells/index.ts";
import { formatNumber, joinUnit } from "./format.ts";
import { words } from "./study-words.ts";

/** More lines than this are left to the command line. */
const mostLines = 60;

/** What a study comes to, as far as it is done; dimmed where it is that of before an edit. */
export function studyOutcome(
  { name }: StudyCell,
  outcome: Outcome,
  { isOld, isBusy }: { readonly isOld: boolean; readonly isBusy: boolean },
): TemplateResult {
  const lines = studyText(outcome, (value, unit) => joinUnit(formatNumber(value, unit)));
  const more = lines.length - mostLines;
  const shown = [...lines.slice(0, mostLines), ...(more > 0 ? [words.moreLines(more)] : [])].join("\n").trim();
  return html`<pre class="study-text${isOld ? " busy" : ""}" tabindex="0" role="group" aria-label=${words.outcome(name)}
    aria-busy=${isBusy ? "true" : "false"}>${shown}</pre>`;
}
