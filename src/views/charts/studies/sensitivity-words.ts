/** What the chart of a sensitivity says in words. */
import type { Effect, SensitivityOutcome } from "../../../cells/index.ts";
import { unitOf } from "../../../library/at-first.ts";
import { listInWords } from "../../drawings/words.ts";
import { joinUnit, numberFormat } from "../../format.ts";
import { type GapGroup, gapGroups } from "./gaps.ts";
import { shownUnit, teller } from "./study-chart.ts";
import { differenceUnit } from "./study-tables.ts";

type Input = SensitivityOutcome["inputs"][number];
type Ranked = SensitivityOutcome["results"][number];

/** "what moves eda and loss". */
export const sensitivityTitle = ({ results }: SensitivityOutcome): string =>
  `What moves ${listInWords(results.map(({ text }) => text))}`;

/** "± 0.5 deg", "± 1% assumed". */
export function movedText({ unit, amount, isAssumed }: Input): string {
  if (amount === null) return "";
  return isAssumed ? "± 1% assumed" : `± ${teller(differenceUnit(unit), 3)(amount)}`;
}

/** How steeply a result follows an input: "0.58 deg per deg". */
export function slopeText({ unit }: Pick<Ranked, "unit">, { derivative }: Effect, input: Input | undefined): string {
  if (derivative === null || !input) return "";
  const per = differenceUnit(input.unit);
  const told = differenceUnit(unit);
  const slope = (derivative * unitOf(per).factor) / unitOf(told).factor;
  const number = joinUnit({ number: numberFormat("1", { figures: 3 })(slope).number, unit: shownUnit(told) });
  return per === "1" ? `slope ${number}` : `${number} per ${per}`;
}

/** "enough_dihedral fails with less tip_break". */
export const fallenText = ({ check, target, way }: SensitivityOutcome["fallen"][number]): string =>
  `${check} fails with ${way} ${target}`;

/** Inputs with which something has no value. */
export const sensitivityGaps = ({ gaps }: SensitivityOutcome): readonly GapGroup[] =>
  gapGroups(gaps.map(({ target, reason }) => ({ where: target, reason })));

/** For each result its value and what moves it, the most first; the checks that fall; what has no value. */
export function sensitivityWords(data: SensitivityOutcome): string {
  const { inputs, results, fallen } = data;
  const told = results.map((result) => {
    const { text, unit, nominal, ranked } = result;
    const tell = teller(unit, 3);
    if (nominal === null) return `${text} has no value as it is.`;
    const moves = ranked.flatMap((effect) => {
      const input = inputs.find(({ target }) => target === effect.target);
      if (effect.less === null || effect.more === null) return [];
      const slope = slopeText(result, effect, input);
      return [
        `${effect.target} ${input ? movedText(input) : ""} to ${tell(effect.less)} or ${tell(effect.more)}${slope ? ` (${slope})` : ""}`,
      ];
    });
    return `${text} is ${tell(nominal)}; it is moved, most first, by ${moves.length > 0 ? listInWords(moves) : "nothing yet"}.`;
  });
  return [
    ...told,
    ...fallen.map((each) => `${fallenText(each)}.`),
    ...sensitivityGaps(data).map(({ where, reason }) => `No value with ${where} moved: ${reason}.`),
  ].join(" ");
}
