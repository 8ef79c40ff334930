/**
 * A drawing painted into dots. It is painted by hand, mark by mark: the page's policy lets no picture in that is not one of
 * its files, and a picture made by the browser from an SVG text would lack the page's typeface.
 */

/** Dots for each px. */
const scale = 2;

/** A PNG of a drawing that carries its look itself (see `standalone`). */
export async function paintedPicture(drawing: SVGElement, { document }: Pick<Window, "document">): Promise<Blob> {
  const canvas = document.createElement("canvas");
  canvas.width = Math.round(scale * numberOf(drawing, "width"));
  canvas.height = Math.round(scale * numberOf(drawing, "height"));
  const context = canvas.getContext("2d");
  if (!context) throw new Error("the browser gave no canvas to paint on");
  context.scale(scale, scale);
  paint(drawing, context, start);
  return new Promise((resolve, reject) =>
    canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error("the picture is too large"))), "image/png"),
  );
}

/** What marks take from those around them. */
type Given = Readonly<Record<string, string>>;

const start: Given = { fill: "#000", stroke: "none", "stroke-width": "1", "font-size": "12", "font-weight": "400" };
const inherited = [
  ...["fill", "fill-opacity", "fill-rule", "stroke", "stroke-opacity", "stroke-width", "stroke-dasharray"],
  ...["stroke-linecap", "stroke-linejoin", "font-family", "font-size", "font-style", "font-weight", "text-anchor"],
  ...["color", "visibility"],
];

function paint(mark: Element, context: CanvasRenderingContext2D, around: Given): void {
  const tag = mark.tagName.toLowerCase();
  if (tag === "title" || tag === "desc") return;
  const own = inherited.flatMap((name) => {
    const value = mark.getAttribute(name);
    return value === null ? [] : [[name, value] as const];
  });
  const given: Given = { ...around, ...Object.fromEntries(own) };
  context.save();
  context.globalAlpha *= Number(mark.getAttribute("opacity") ?? 1);
  if (tag === "svg" || tag === "g") {
    context.translate(numberOf(mark, "x"), numberOf(mark, "y"));
    for (const child of mark.children) paint(child, context, given);
  } else if (given.visibility !== "hidden") {
    if (tag === "text") write(mark, context, given);
    else draw(pathOf(mark, tag), context, given);
  }
  context.restore();
}

/** The outline of a mark. Throws on one that no drawing has. */
function pathOf(mark: Element, tag: string): Path2D {
  if (tag === "path") return new Path2D(mark.getAttribute("d") ?? "");
  const path = new Path2D();
  const at = (name: string): number => numberOf(mark, name);
  if (tag === "circle") path.arc(at("cx"), at("cy"), at("r"), 0, 2 * Math.PI);
  else if (tag === "rect") path.roundRect(at("x"), at("y"), at("width"), at("height"), at("rx"));
  else if (tag === "line") {
    path.moveTo(at("x1"), at("y1"));
    path.lineTo(at("x2"), at("y2"));
  } else throw new Error(`got a mark ${tag}, expected one that drawings are made of`);
  return path;
}

function draw(path: Path2D, context: CanvasRenderingContext2D, given: Given): void {
  const alpha = context.globalAlpha;
  if (given.fill !== "none") {
    context.globalAlpha = alpha * Number(given["fill-opacity"] ?? 1);
    context.fillStyle = colorOf(given, "fill");
    context.fill(path, given["fill-rule"] === "evenodd" ? "evenodd" : "nonzero");
  }
  if (given.stroke !== "none") {
    context.globalAlpha = alpha * Number(given["stroke-opacity"] ?? 1);
    context.strokeStyle = colorOf(given, "stroke");
    context.lineWidth = Number.parseFloat(given["stroke-width"] ?? "1");
    context.lineCap = (given["stroke-linecap"] ?? "butt") as CanvasLineCap;
    context.lineJoin = (given["stroke-linejoin"] ?? "miter") as CanvasLineJoin;
    const dashes = given["stroke-dasharray"];
    context.setLineDash(dashes && dashes !== "none" ? dashes.split(/[\s,]+/).map(Number) : []);
    context.stroke(path);
  }
}

function write(mark: Element, context: CanvasRenderingContext2D, given: Given): void {
  const { "font-style": style = "normal", "font-weight": weight, "font-size": size, "font-family": family } = given;
  context.font = `${style} ${weight} ${Number.parseFloat(size ?? "12")}px ${family ?? "sans-serif"}`;
  context.textAlign = ({ middle: "center", end: "end" } as const)[given["text-anchor"] ?? ""] ?? "start";
  context.fillStyle = colorOf(given, "fill");
  context.fillText(mark.textContent ?? "", numberOf(mark, "x"), numberOf(mark, "y"));
}

const colorOf = (given: Given, name: "fill" | "stroke"): string => {
  const color = given[name] ?? "none";
  return color.toLowerCase() === "currentcolor" ? (given.color ?? "#000") : color;
};

const numberOf = (mark: Element, name: string): number => Number.parseFloat(mark.getAttribute(name) ?? "0");
