import { degreesFigure, type LengthFormat, partText } from "./dimension-text.ts";
import type { GliderDrawingData, GliderOnPaper } from "./glider.ts";
import { balanceInWords } from "./glider-words.ts";
import { ghostsInWords } from "./head.ts";
import type { SideOutline } from "./side-view-outline.ts";

/** What a side view shows, in words. */
export function sideViewWords(
  { glider, baseline, further = [] }: GliderDrawingData,
  outline: SideOutline,
  format: LengthFormat,
): string {
  const told = (value: number): string => partText(value, glider.wing.span / 2, format);
  const { tailplane, fin, stick, seat_height } = glider;
  const shown = [
    "Seen from the left, nose to the left.",
    `Wing root${seat_height === 0 ? "" : ` ${told(seat_height)} up,`} at ${degreesFigure(glider.seat_angle)} degrees, its tip ${told(outline.tip.y)} up.`,
    ...(tailplane
      ? [
          `Tailplane ${told(tailplane.x)} behind the root's leading edge, at ${degreesFigure(tailplane.incidence)} degrees.`,
        ]
      : []),
    ...(glider.decalage === undefined ? [] : [`Decalage ${degreesFigure(glider.decalage)} degrees.`]),
    ...(fin ? [`Fin ${told(fin.height)} high.`] : []),
    ...(stick
      ? [`Stick ${told(stick.length)} long, from ${told(-stick.front_x)} ahead of the root's leading edge.`]
      : []),
    ...balanceInWords(glider, told),
  ].join(" ");
  const before = baseline && { name: baseline.name, told: angles(baseline.glider) };
  const others = further.map(({ name, glider: other }) => ({ name, told: angles(other) }));
  return [shown, ...ghostsInWords(before, others)].join(" ");
}

const angles = ({ seat_angle, tailplane }: GliderOnPaper): string =>
  `wing at ${degreesFigure(seat_angle)} degrees${tailplane ? `, tailplane at ${degreesFigure(tailplane.incidence)} degrees` : ""}`;
