import { type IRectangle, MaxRectsPacker, PACKING_LOGIC } from "maxrects-packer";
import { numberText } from "../number-text.ts";
import { define, number, type Refuse, record, table, text, type ValueOf } from "../spec.ts";
import { type Pattern, patternRecord } from "./pattern-record.ts";

const nestedRecord = record(
  "nested_sheets",
  "parts laid out on stock sheets",
  {
    sheets: table("each sheet", {
      sheet: text("its name: number and thickness"),
      thickness: number("mm", "its thickness"),
      parts: number("1", "parts on it"),
      used: number("cm^2", "area of its parts"),
      left: number("%", "share of the sheet that is left over"),
      mass: number("g", "the whole sheet, where a density is given", { optional: true }),
    }),
    places: table("where each part lies", {
      part: text("the part"),
      sheet: text("the sheet that it lies on"),
      x: number("mm", "its lower left corner, along the grain"),
      y: number("mm", "its lower left corner, across"),
    }),
    count: number("1", "sheets needed"),
    used: number("cm^2", "area of all parts"),
    left: number("%", "share of all sheets that is left over"),
    pattern: { ...patternRecord, summary: "the sheets with all lines of the parts on them" },
  },
  ({ count, left }) => `${count} ${count === 1 ? "sheet" : "sheets"}, ${numberText(left, "%")} left over`,
);
export type NestedSheets = ValueOf<typeof nestedRecord>;

const blank = (part: readonly string[], size: readonly (readonly [number, number])[]): Pattern => ({
  parts: {
    part,
    thickness: part.map(() => 0.003),
    width: size.map(([width]) => width),
    height: size.map(([, height]) => height),
    area: size.map(([width, height]) => width * height),
  },
  lines: { part: [], layer: [], stroke: [], x: [], y: [] },
  labels: { part: [], label: [], x: [], y: [], angle: [], size: [] },
});

/** `nested_sheets(pattern, …)`: parts laid out on stock sheets, the grain kept. */
export const nestedSheets = define({
  name: "nested_sheets",
  summary: "Lays the parts of a pattern out on stock sheets without turning the grain, and counts sheets and waste.",
  topic: "build",
  parameters: {
    pattern: patternRecord,
    more: { ...patternRecord, summary: "further parts to lay out with them", optional: true },
    further: { ...patternRecord, summary: "and still further ones", optional: true },
    length: number("mm", "length of a stock sheet, along the grain", { above: 0, default: 36 * 0.0254 }),
    width: number("mm", "width of a stock sheet", { above: 0, default: 3 * 0.0254 }),
    stock: {
      ...table("sheets of other sizes, each for all parts of its thickness", {
        thickness: number("mm", "thickness of these sheets", { above: 0 }),
        length: number("mm", "their length, along the grain", { above: 0 }),
        width: number("mm", "their width", { above: 0 }),
      }),
      optional: true,
    },
    gap: number("mm", "kept free between parts", { min: 0, max: 0.05, default: 0.002 }),
    rim: number("mm", "kept free along the rim of the sheet", { min: 0, max: 0.05, default: 0 }),
    density: number("kg/m^3", "density of the sheets, to tell their mass", { above: 0, optional: true }),
  },
  result: nestedRecord,
  formula: "parts of one thickness share sheets; left = 1 − area of the parts / area of the sheets",
  errors: [
    "There is nothing to lay out.",
    "A part is larger than a sheet.",
    "Two parts have one name.",
    "The table stock has two sizes for one thickness.",
  ],
  assumptions: [
    "Each part keeps its box along the grain: boxes are packed, not outlines, so that a ruler and a knife can follow.",
    "A thickness that the table stock does not name comes in sheets of length by width.",
  ],
  sources: [
    {
      text: "J. Jylänki, A Thousand Ways to Pack the Bin, 2010: maximal rectangles, best area fit",
      mark: "from memory",
    },
  ],
  examples: [
    {
      summary: "five parts on sheets of 400 by 100 mm: two of 60 mm width do not stand beside each other",
      arguments: {
        pattern: blank(
          ["a", "b", "c", "d", "e"],
          [
            [0.3, 0.06],
            [0.3, 0.06],
            [0.3, 0.03],
            [0.09, 0.09],
            [0.08, 0.09],
          ],
        ),
        length: 0.4,
        width: 0.1,
        density: 100,
      },
      result: { count: 2, used: 0.018 + 0.018 + 0.009 + 0.0081 + 0.0072, left: 1 - 0.0603 / 0.08 },
    },
  ],
  isSlow: true,
  compute: ({ pattern, more, further, ...stock }, refuse) => {
    const all = merged([pattern, more, further].filter((each) => each !== undefined));
    refuseTwice(stock, refuse);
    refuseUnfit(all, stock, refuse);
    const thicknesses = [...new Set(all.parts.thickness)].sort((a, b) => b - a);
    const sheets = thicknesses.flatMap((thickness) => pack(all, thickness, stock));
    const named = sheets.map((sheet, index) => ({
      ...sheet,
      name: `sheet ${index + 1}, ${numberText(sheet.thickness, "mm")}`,
    }));
    const placed = named.flatMap(({ name, boxes }) => boxes.map((box) => ({ ...box, sheet: name })));
    const areaOf = (boxes: readonly Box[]) => boxes.reduce((sum, { index }) => sum + (all.parts.area[index] ?? 0), 0);
    const used = areaOf(placed);
    const areas = named.map(({ length, width }) => length * width);
    return {
      sheets: {
        sheet: named.map(({ name }) => name),
        thickness: named.map(({ thickness }) => thickness),
        parts: named.map(({ boxes }) => boxes.length),
        used: named.map(({ boxes }) => areaOf(boxes)),
        left: named.map(({ boxes }, index) => 1 - areaOf(boxes) / (areas[index] ?? 0)),
        ...(stock.density !== undefined && {
          mass: named.map(({ thickness }, index) => (stock.density ?? 0) * (areas[index] ?? 0) * thickness),
        }),
      },
      places: {
        part: placed.map(({ index }) => all.parts.part[index] ?? ""),
        sheet: placed.map(({ sheet }) => sheet),
        x: placed.map(({ x }) => x),
        y: placed.map(({ y }) => y),
      },
      count: named.length,
      used,
      left: 1 - used / areas.reduce((sum, each) => sum + each, 0),
      pattern: onSheets(all, named),
    };
  },
});

interface Stock {
  readonly length: number;
  readonly width: number;
  readonly stock?:
    | {
        readonly thickness: readonly number[];
        readonly length: readonly number[];
        readonly width: readonly number[];
      }
    | undefined;
  readonly gap: number;
  readonly rim: number;
}
/** A part by its place in the list of parts, and where its lower left corner lies. */
interface Box {
  readonly index: number;
  readonly x: number;
  readonly y: number;
}

interface PackedBox extends IRectangle {
  readonly index: number;
}

/** Sheets are bought by tenths of a millimetre: nearer than half of one is the same thickness. */
const same = (one: number, other: number): boolean => Math.abs(one - other) < 0.05e-3;

/** Length and width of the sheets of a thickness. */
function sizeOf({ length, width, stock }: Stock, thickness: number): { length: number; width: number } {
  const row = stock?.thickness.findIndex((each) => same(each, thickness)) ?? -1;
  return row < 0 ? { length, width } : { length: stock?.length[row] ?? length, width: stock?.width[row] ?? width };
}

function refuseTwice({ stock }: Stock, refuse: Refuse): void {
  const twice = stock?.thickness.find((one, index) => stock.thickness.findIndex((other) => same(one, other)) < index);
  if (twice !== undefined)
    refuse("stock", `It has two sizes for sheets of ${numberText(twice, "mm")}. Keep the one that is at hand.`);
}

function refuseUnfit({ parts }: Pattern, stock: Stock, refuse: Refuse): void {
  if (parts.part.length === 0)
    refuse("pattern", "The pattern has no part. Give one that has, such as wing_blanks(wing).pattern.");
  const twice = parts.part.find((name, index) => parts.part.indexOf(name) !== index);
  if (twice !== undefined) refuse("more", `Two parts have the name ${twice}. Lay each out once.`);
  parts.part.forEach((name, index) => {
    const [wide, high] = [parts.width[index] ?? 0, parts.height[index] ?? 0];
    const mm = (size: number) => numberText(size, "mm");
    const { rim } = stock;
    const { length, width } = sizeOf(stock, parts.thickness[index] ?? 0);
    if (wide > length - 2 * rim + 1e-9 || high > width - 2 * rim + 1e-9) {
      refuse(
        "length",
        `The part ${name} is ${mm(wide)} by ${mm(high)} and no sheet of ${mm(length)} by ${mm(width)}${rim > 0 ? `, less its rim of ${mm(rim)},` : ""} ` +
          "is as large. Take larger sheets, glue two edge to edge, or split the panel.",
      );
    }
  });
}

/** The sheets of one thickness. The packer counts in whole numbers best: hundredths of a millimetre. */
function pack({ parts }: Pattern, thickness: number, stock: Stock) {
  const unit = 1e-5;
  const { gap, rim } = stock;
  const { length, width } = sizeOf(stock, thickness);
  const packer = new MaxRectsPacker<PackedBox>(
    Math.floor((length - 2 * rim + gap) / unit + 1e-6),
    Math.floor((width - 2 * rim + gap) / unit + 1e-6),
    0,
    { smart: false, pot: false, square: false, allowRotation: false, border: 0, logic: PACKING_LOGIC.MAX_AREA },
  );
  const boxes = parts.part.flatMap((_, index) => {
    if (parts.thickness[index] !== thickness) return [];
    const size = (of: readonly number[]) => Math.ceil(((of[index] ?? 0) + gap) / unit - 1e-6);
    const box: PackedBox = { width: size(parts.width), height: size(parts.height), x: 0, y: 0, index };
    return [box];
  });
  packer.addArray(boxes);
  return packer.bins.map((bin) => ({
    ...{ thickness, length, width },
    boxes: bin.rects.map(({ x, y, index }): Box => ({ index, x: rim + x * unit, y: rim + y * unit })),
  }));
}

function merged(patterns: readonly Pattern[]): Pattern {
  const join = <K extends "parts" | "lines" | "labels">(table: K): Pattern[K] => {
    const first = patterns[0]?.[table] as Readonly<Record<string, readonly unknown[]>>;
    const columns = Object.keys(first ?? {}).map((column) => [
      column,
      patterns.flatMap((each) => (each[table] as typeof first)[column] ?? []),
    ]);
    return Object.fromEntries(columns) as Pattern[K];
  };
  return { parts: join("parts"), lines: join("lines"), labels: join("labels") };
}

/** The sheets as parts, with the lines and words of what lies on them. */
function onSheets(
  { parts, lines, labels }: Pattern,
  sheets: readonly { name: string; thickness: number; length: number; width: number; boxes: readonly Box[] }[],
): Pattern {
  const places = new Map(
    sheets.flatMap(({ name, boxes }) =>
      boxes.map(({ index, x, y }) => [parts.part[index] ?? "", { name, x, y, index }]),
    ),
  );
  const placeOf = (part: string) => places.get(part) ?? { name: "", x: 0, y: 0, index: 0 };
  const most = Math.max(0, ...lines.stroke);
  return {
    parts: {
      part: sheets.map(({ name }) => name),
      thickness: sheets.map(({ thickness }) => thickness),
      width: sheets.map(({ length }) => length),
      height: sheets.map(({ width }) => width),
      area: sheets.map(({ length, width }) => length * width),
    },
    lines: {
      part: lines.part.map((part) => placeOf(part).name),
      layer: lines.layer,
      // Strokes of the parts on one sheet must not run into each other.
      stroke: lines.stroke.map((stroke, at) => stroke + most * placeOf(lines.part[at] ?? "").index),
      x: lines.x.map((x, at) => x + placeOf(lines.part[at] ?? "").x),
      y: lines.y.map((y, at) => y + placeOf(lines.part[at] ?? "").y),
    },
    labels: {
      ...labels,
      part: labels.part.map((part) => placeOf(part).name),
      x: labels.x.map((x, at) => x + placeOf(labels.part[at] ?? "").x),
      y: labels.y.map((y, at) => y + placeOf(labels.part[at] ?? "").y),
    },
  };
}
