/** What can be said of a chart: its view, and what that shows. */
import type { CellPatch, ChartCell } from "../cells/index.ts";
import type { Shape } from "../library/index.ts";
import type { Desk } from "./desk.ts";
import type { Detail } from "./details.ts";
import { titleOfView } from "./figure-words.ts";
import { viewsOf } from "./figures.ts";
import { hasRange, isNumber, isRecord, namesOf, pathsOf } from "./named-cells.ts";
import { recordsOf } from "./record-chart-figure.ts";
import { words } from "./words.ts";

const { fields } = words;

type Set = (key: string, patch: CellPatch) => void;

/** The details of a chart but for its title: some views show one result, others a given swept over its range. */
export function chartDetails(desk: Desk, cell: ChartCell, set: Set): Detail[] {
  const { view, sweep = "", x = "", of = "" } = cell;
  const views: Detail = {
    label: fields.view,
    value: view,
    choices: viewsOf("chart").map((each) => [each, titleOfView(each)]),
    set: (now) => set("view", { view: now, ...contentFor(desk, now, cell) }),
  };
  const takes = recordsOf(view);
  if (takes) {
    const put = (now: string): void => set("of", { of: now });
    return [views, { label: fields.of, value: of, offers: recordsIn(desk, takes), late: true, set: put }];
  }
  return [
    views,
    chosen(fields.sweep, sweep, namesOf(desk, hasRange), (now) => set("sweep", { sweep: now })),
    chosen(fields.x, x, namesOf(desk, isNumber), (now) => set("x", { x: now })),
    ...yDetails(desk, cell, set),
  ];
}

/** What a chart says in another view: what fits neither goes, and what it needs is the first that there is. */
function contentFor(desk: Desk, view: string, { sweep, x, y, of }: ChartCell): CellPatch {
  const takes = recordsOf(view);
  if (takes) {
    const offers = recordsIn(desk, takes);
    const shown = of !== undefined && offers.includes(of) ? of : (offers[0] ?? "");
    return { of: shown, sweep: undefined, x: undefined, y: undefined };
  }
  const [given = ""] = namesOf(desk, hasRange);
  const [result = ""] = namesOf(desk, (step) => isNumber(step) && step.cell.kind === "derived");
  return { of: undefined, sweep: sweep ?? given, x: x ?? given, y: y ?? [result] };
}

/** Names and fields that give a record of one of some types. */
function recordsIn(desk: Desk, types: readonly string[]): string[] {
  const fits = (shape: Shape | null | undefined): boolean =>
    shape?.kind === "record" && shape.type !== null && types.includes(shape.type);
  const isRoot = (path: string): boolean => !path.includes(".");
  const rootFits = (path: string): boolean => fits(desk.session.program.byName.get(path)?.shape);
  return pathsOf(desk, isRecord, fits).filter((path) => !isRoot(path) || rootFits(path));
}

/** Each curve of a chart, and one more; one of them stays. */
function yDetails(desk: Desk, { y = [] }: ChartCell, set: Set): Detail[] {
  const names = namesOf(desk, isNumber);
  return [...y, ""].map((value, index) => {
    const put = (now: string): void => {
      const all = [...y.slice(0, index), now, ...y.slice(index + 1)].filter((each) => each !== "");
      if (all.length > 0) set("y", { y: all });
    };
    const mayBeNone = y.length > 1 || index === y.length;
    const detail = chosen(index === 0 ? fields.y : fields.another, value, names, put);
    return mayBeNone ? { ...detail, choices: [["", fields.none], ...(detail.choices ?? [])] } : detail;
  });
}

function chosen(label: string, value: string, names: readonly string[], set: (now: string) => void): Detail {
  return { label, value, choices: names.map((name) => [name, name]), set };
}
