/** A point, mm. */
export type Point = readonly [x: number, y: number];

/** A part at true size in a frame of its own, mm: x to the right along the grain, y up, its lowest and leftmost at 0. */
export interface Part {
  readonly name: string;
  readonly thickness: number;
  readonly width: number;
  readonly height: number;
  readonly strokes: readonly Stroke[];
  readonly labels: readonly Label[];
}
export interface Stroke {
  readonly layer: "cut" | "score";
  readonly points: readonly Point[];
}
export interface Label {
  readonly text: string;
  /** Its middle. */
  readonly at: Point;
  /** Degrees, turned to the left. */
  readonly angle: number;
  /** Height of the letters, mm. */
  readonly size: number;
}

/** A pattern as the library has it: tables of parts, of the points of their lines and of their labels, in SI. */
export interface PatternValue {
  readonly parts: {
    readonly part: readonly string[];
    readonly thickness: readonly number[];
    readonly width: readonly number[];
    readonly height: readonly number[];
  };
  readonly lines: {
    readonly part: readonly string[];
    readonly layer: readonly string[];
    readonly stroke: readonly number[];
    readonly x: readonly number[];
    readonly y: readonly number[];
  };
  readonly labels: {
    readonly part: readonly string[];
    readonly label: readonly string[];
    readonly x: readonly number[];
    readonly y: readonly number[];
    readonly angle: readonly number[];
    readonly size: readonly number[];
  };
}

const mm = (metres: number | undefined): number => (metres ?? 0) * 1000;

/** The parts of a pattern, in its order. */
export function partsOf({ parts, lines, labels }: PatternValue): Part[] {
  const strokes = new Map<string, Map<number, { layer: Stroke["layer"]; points: Point[] }>>();
  lines.part.forEach((part, i) => {
    const own = strokes.get(part) ?? new Map();
    strokes.set(part, own);
    const number = lines.stroke[i] as number;
    const stroke = own.get(number) ?? { layer: lines.layer[i] === "cut" ? "cut" : "score", points: [] };
    own.set(number, stroke);
    stroke.points.push([mm(lines.x[i]), mm(lines.y[i])]);
  });
  const written = new Map<string, Label[]>();
  labels.part.forEach((part, i) => {
    const label = {
      text: labels.label[i] as string,
      at: [mm(labels.x[i]), mm(labels.y[i])] as const,
      angle: ((labels.angle[i] as number) * 180) / Math.PI,
      size: mm(labels.size[i]),
    };
    written.set(part, [...(written.get(part) ?? []), label]);
  });
  return parts.part.map((name, i) => ({
    name,
    thickness: mm(parts.thickness[i]),
    width: mm(parts.width[i]),
    height: mm(parts.height[i]),
    strokes: [...(strokes.get(name)?.values() ?? [])],
    labels: written.get(name) ?? [],
  }));
}
