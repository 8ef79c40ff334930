/** How wide a text stands, so that labels can be placed without a browser. */

/** How a label is set: size in px, weight 400 to 700. */
export interface TextStyle {
  readonly size: number;
  readonly weight: number;
}

/** The width of a text in px. */
export type Measure = (text: string, style: TextStyle) => number;

/**
 * Width from the advances of Atkinson Hyperlegible Next, weights in between interpolated, kerning left out; good to
 * about 1 % where that font is shown. A character without an entry counts as wide as "M".
 */
export const estimateWidth: Measure = (text, { size, weight }) => {
  const bolder = (weight - 400) / 300;
  let hundredths = 0;
  for (const character of text) {
    const index = characters.indexOf(character);
    const light = regular[index] ?? widest;
    hundredths += light + bolder * ((bold[index] ?? widest) - light);
  }
  return (hundredths * size) / 100;
};

/**
 * Width as the browser sets it, on a canvas of its own, each text measured once. Make a new one when fonts have loaded:
 * before, it measures the fallback.
 */
export function canvasMeasure(document: Document, family: string): Measure {
  const context = document.createElement("canvas").getContext("2d");
  if (!context) return estimateWidth;
  const known = new Map<string, number>();
  return (text, { size, weight }) => {
    const font = `${weight} ${size}px ${family}`;
    const key = `${font} ${text}`;
    let width = known.get(key);
    if (width === undefined) {
      if (known.size > mostKnown) known.clear();
      context.font = font;
      width = context.measureText(text).width;
      known.set(key, width);
    }
    return width;
  };
}

/** A text that is no wider than some px, cut short with "…" if it must be; empty where not even that fits. */
export function shorten(text: string, width: number, style: TextStyle, measure: Measure): string {
  if (measure(text, style) <= width) return text;
  let length = text.length - 1;
  while (length > 0 && measure(`${text.slice(0, length).trimEnd()}…`, style) > width) length--;
  return length > 0 ? `${text.slice(0, length).trimEnd()}…` : "";
}

/** A text in lines that are no wider than some px, parted between words; a word that is wider is cut short. */
export function wrapped(text: string, width: number, style: TextStyle, measure: Measure): string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const longer = lines.length === 0 ? word : `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && measure(longer, style) <= width) lines[lines.length - 1] = longer;
    else lines.push(shorten(word, width, style, measure));
  }
  return lines;
}

/** How far ink reaches above and below the baseline, in px; figures and capitals have nothing below. */
export function textReach(text: string, size: number): { readonly above: number; readonly below: number } {
  return { above: 0.72 * size, below: /[()[\]{}gjpqy,;_Q]/.test(text) ? 0.21 * size : 0.02 * size };
}

const mostKnown = 4000;
const widest = 84;
const characters =
  " !\"#$%&'()*+,-./0123456789:;<=>?@ABCDEFGHIJKLMNOPQRSTUVWXYZ[\\]^_`abcdefghijklmnopqrstuvwxyz{|}~°−×≈…–—·±²³";

/** Advances at weight 400 and 700 in hundredths of the size, measured from the font in a browser. */
const regular = numbers(
  "28 29 30 65 59 92 73 16 30 30 49 61 21 36 21 39 65 41 55 58 61 59 60 51 62 60 21 21 55 63 55 48 78 63 61 65 67 57 " +
    "55 69 69 39 51 63 54 82 69 71 59 72 61 59 56 69 59 86 62 58 61 32 39 34 55 37 24 53 57 49 56 54 31 56 55 25 25 " +
    "49 26 85 55 55 57 57 35 47 33 54 46 68 48 45 46 34 24 34 56 35 61 53 55 67 50 82 24 58 38 38",
);
const bold = numbers(
  "31 30 39 77 61 97 73 21 34 34 49 60 27 37 27 44 66 44 58 60 62 61 63 54 62 57 27 27 57 61 57 55 78 68 64 66 69 60 " +
    "57 72 70 43 56 66 55 86 72 75 63 76 65 61 61 69 64 89 69 65 62 34 44 34 58 40 29 55 60 51 60 56 37 59 57 30 26 " +
    "56 32 88 57 58 60 60 38 51 38 57 53 74 54 52 51 38 25 38 54 39 60 54 55 78 50 83 29 61 40 41",
);

function numbers(list: string): readonly number[] {
  return list.split(" ").map(Number);
}
