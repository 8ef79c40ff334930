import { type LengthFormat, lengthText, partFigure, partText } from "./dimension-text.ts";
import type { GliderDrawingData, GliderOnPaper, HalfOnPaper, WingOnPaper } from "./glider.ts";
import { balanceInWords } from "./glider-words.ts";
import { ghostsInWords } from "./head.ts";
import { countInWords, listInWords } from "./words.ts";

/** What a plan view shows, in words. */
export function planViewWords({ glider, baseline, further = [] }: GliderDrawingData, format: LengthFormat): string {
  const shown = `Seen from above, nose up. ${gliderInWords(glider, format)}`;
  const told = ({ glider: { wing }, name }: { readonly glider: GliderOnPaper; readonly name: string }) => ({
    name,
    told: `span ${lengthText(wing.span, format)}, ${halvesInWords(wing, format)}`,
  });
  return [shown, ...ghostsInWords(baseline && told(baseline), further.map(told))].join(" ");
}

function gliderInWords(glider: GliderOnPaper, format: LengthFormat): string {
  const { wing, tailplane, fin, stick } = glider;
  const told = (value: number): string => partText(value, wing.span / 2, format);
  return [
    `Span ${lengthText(wing.span, format)}, ${halvesInWords(wing, format)}.`,
    `Mean aerodynamic chord ${told(wing.mac)}, ${told(wing.mac_y)} from the middle.`,
    ...balanceInWords(glider, told),
    ...(tailplane ? [`Tailplane ${told(tailplane.span)} span${armInWords(glider, told)}.`] : []),
    ...(fin ? [`Fin ${told(fin.root_chord)} long at its foot.`] : []),
    ...(stick ? [`Stick ${told(stick.length)} long.`] : []),
  ].join(" ");
}

function halvesInWords(wing: WingOnPaper, format: LengthFormat): string {
  if (wing.mirrored) return halfInWords(wing.right, wing.span, " a side", format);
  const right = halfInWords(wing.right, wing.span, " on the right", format);
  return `${right}; ${halfInWords(wing.left, wing.span, " on the left", format)}`;
}

function halfInWords(
  { length, root_chord, tip_chord }: HalfOnPaper,
  span: number,
  where: string,
  format: LengthFormat,
) {
  const told = (value = Number.NaN): string => partFigure(value, span / 2, format);
  const panels = `${countInWords(length.length)} ${length.length === 1 ? "panel" : "panels"}${where}`;
  const lengths = `${listInWords(length.map(told))} ${format.unit} along the wood`;
  return `${panels}, ${lengths}, chord ${told(root_chord[0])} ${format.unit} at the root and ${told(tip_chord.at(-1))} ${format.unit} at the tip`;
}

const armInWords = ({ tail_arm }: GliderOnPaper, told: (value: number) => string): string =>
  tail_arm === undefined ? "" : `, tail arm ${told(tail_arm)}`;
