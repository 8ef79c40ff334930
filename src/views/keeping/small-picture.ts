import { html, nothing, svg, type TemplateResult } from "lit";
import type { Result, Session } from "../../cells/index.ts";
import type { Point } from "../drawings/geometry.ts";
import { type WingInFront, wingOutline } from "../drawings/wing-outline.ts";

/** A wing from the front for the list of notebooks: each panel as x, y of its four corners, in mm; y upwards. */
export type PictureData = readonly (readonly number[])[];

/** More panels than this are no picture any more. */
const most = 100;

/**
 * The wing that stands for a notebook: that of its first front view, else the first of all; null where there is none or
 * a question hides it.
 */
export function takePicture(session: Session): PictureData | null {
  const { cells } = session.notebook;
  const fronts = cells.filter((cell) => cell.kind === "drawing" && cell.view === "front");
  for (const { id } of [...fronts, ...cells]) {
    const wing = session.concealed.has(id) ? undefined : wingOf(session.result(id));
    const picture = wing && pictureOfWing(wing);
    if (picture) return picture;
  }
  return null;
}

/** What stands in the storage as a picture; null where it is none. */
export function pictureOf(stored: unknown): PictureData | null {
  const isPanel = (panel: unknown): panel is number[] =>
    Array.isArray(panel) && panel.length === 8 && panel.every((each) => Number.isFinite(each));
  return Array.isArray(stored) && stored.length > 0 && stored.length <= most && stored.every(isPanel) ? stored : null;
}

/** The picture, at true proportion, as wide as its place; it only reminds, and has no name. */
export function smallPicture(picture: PictureData | null): TemplateResult | typeof nothing {
  if (!picture) return nothing;
  const xs = picture.flatMap((panel) => panel.filter((_, at) => at % 2 === 0));
  const ys = picture.flatMap((panel) => panel.filter((_, at) => at % 2 === 1));
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const width = Math.max(right - left, 1);
  // The line is as thin for a wing of any size: a share of its span.
  const edge = width * 0.01;
  const box = [left - edge, -high - edge, width + 2 * edge, high - low + 2 * edge].join(" ");
  return html`<svg class="small-picture" viewBox=${box} preserveAspectRatio="xMidYMid meet" aria-hidden="true">
    ${picture.map((panel) => svg`<path d=${pathOf(panel)} vector-effect="non-scaling-stroke"></path>`)}
  </svg>`;
}

function wingOf(result: Result | undefined): WingInFront | undefined {
  if (!result?.ok || result.shape.kind !== "record") return undefined;
  const { shape, value } = result;
  if (shape.type === "wing") return value as unknown as WingInFront;
  return shape.type === "glider" ? (value as unknown as { readonly wing: WingInFront }).wing : undefined;
}

function pictureOfWing(wing: WingInFront): PictureData | null {
  const { right, left } = wingOutline(wing);
  const panels = [...[...left].reverse(), ...right].map(({ lower, upper }) =>
    [lower[0], lower[1], upper[1], upper[0]].flatMap(({ x, y }: Point) => [inMm(x), inMm(y)]),
  );
  return pictureOf(panels);
}

const inMm = (metres: number): number => Math.round(metres * 1e4) / 10;

function pathOf(panel: readonly number[]): string {
  const points = [0, 2, 4, 6].map((at) => `${panel[at] ?? 0} ${-(panel[at + 1] ?? 0)}`);
  return `M${points.join("L")}Z`;
}
