import type { Box } from "./geometry.ts";
import type { Mark } from "./sketch.ts";
import { straight, strokeMarks, textAt } from "./strokes.ts";
import { type Measure, shorten, textReach } from "./text-size.ts";

/** What stands over a drawing. */
export interface Head {
  /** How it is seen and in which unit. */
  readonly seen: string;
  /** The unit alone, for where figures were left out. */
  readonly unit: string;
  /** How many figures found no room. */
  readonly leftOut: number;
  /** What the thin line is, where there is one. */
  readonly baseline: string | undefined;
  /** What the dashed lines are. */
  readonly further?: readonly string[] | undefined;
}

/** How the thin line of a further design is drawn, by its place among them: dashes tell them apart. */
export const furtherClass = (index: number): string => `ghost further-${(index % 3) + 1}`;

/** The line over a drawing: how it is seen and in which unit, figures left out, and what the thin lines are. */
export function headMarks(
  { seen, unit, leftOut, baseline, further = [] }: Head,
  y: number,
  room: Box,
  measure: Measure,
): Mark[] {
  const { left, right } = room;
  const noteMark = (until: number): Mark => {
    const lacking = `${leftOut} ${leftOut === 1 ? "figure" : "figures"} without room`;
    const text = leftOut === 0 ? seen : `${unit}, ${lacking}`;
    return textAt("note", shorten(text, until - left, note, measure), { x: left, y }, note);
  };
  const ghosts = [
    ...further.map((name, index) => ({ name, class: furtherClass(index) })),
    ...(baseline === undefined ? [] : [{ name: baseline, class: "ghost" }]),
  ];
  const middle = y - textReach("x", note.size).above / 2;
  let end = right;
  const legend = ghosts.toReversed().flatMap((ghost) => {
    const name = shorten(ghost.name, (right - left) / Math.max(3, 1.6 * ghosts.length), note, measure);
    const start = end - measure(name, note);
    end = start - 40;
    const sample = straight(ghost.class, { x: start - 30, y: middle }, { x: start - 7, y: middle });
    return [textAt("note", name, { x: start, y }, note), ...strokeMarks([sample])];
  });
  // Where the lines have many names, how it is seen steps aside.
  return ghosts.length > 0 && end - left < 60 ? legend : [noteMark(end), ...legend];
}

/** The names of what is drawn thin behind a design. */
export const ghostNames = ({
  baseline,
  further,
}: {
  readonly baseline?: { readonly name: string } | undefined;
  readonly further?: readonly { readonly name: string }[] | undefined;
}): Pick<Head, "baseline" | "further"> => ({
  baseline: baseline?.name,
  further: further?.map(({ name }) => name),
});

/** What the thin line is, and each dashed one, in a sentence. */
export function ghostsInWords(baseline: ToldGhost | undefined, further: readonly ToldGhost[]): string[] {
  return [
    ...(baseline ? [`The thin line is ${baseline.name}: ${baseline.told}.`] : []),
    ...further.map(({ name, told }) => `A dashed line is ${name}: ${told}.`),
  ];
}
interface ToldGhost {
  readonly name: string;
  readonly told: string;
}

/** How notes are set. */
export const note = { size: 12, weight: 400 } as const;
