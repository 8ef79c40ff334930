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
  const { view, sweep = "", x = "", of = "", band = "" } = cell;
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
  const names = cell.curves ? fieldsOf(desk, cell.curves) : namesOf(desk, isNumber);
  return [
    views,
    chosen(fields.sweep, sweep, namesOf(desk, hasRange), (now) => set("sweep", { sweep: now })),
    chosen(fields.x, x, names, (now) => set("x", { x: now })),
    ...yDetails(names, cell, set),
    ...curveDetails(desk, cell, set),
    orNone(chosen(fields.band, band, namesOf(desk, isNumber), (now) => set("band", { band: now || undefined }))),
  ];
}

/** What a chart says in another view: what fits neither goes, and what it needs is the first that there is. */
function contentFor(desk: Desk, view: string, { sweep, x, y, of }: ChartCell): CellPatch {
  const takes = recordsOf(view);
  if (takes) {
    const offers = recordsIn(desk, takes);
    const shown = of !== undefined && offers.includes(of) ? of : (offers[0] ?? "");
    return { of: shown, sweep: undefined, x: undefined, y: undefined, curves: undefined, band: undefined };
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

/** The cells whose fields are drawn, a curve each, and one more; without any x and y are cells themselves again. */
function curveDetails(desk: Desk, { curves = [], x, y }: ChartCell, set: Set): Detail[] {
  return [...curves, ""].map((value, index) => {
    const put = (now: string): void => {
      const all = [...curves.slice(0, index), now, ...curves.slice(index + 1)].filter((each) => each !== "");
      if (all.length === 0) {
        const [name = ""] = namesOf(desk, isNumber);
        set("curves", { curves: undefined, x: name, y: [name] });
        return;
      }
      const known = fieldsOf(desk, all);
      const kept = (field: string | undefined, otherwise: number): string =>
        field !== undefined && known.includes(field) ? field : (known[otherwise] ?? "");
      set("curves", { curves: all, x: kept(x, 0), y: (y ?? [""]).map((field) => kept(field, 1)) });
    };
    return orNone(chosen(index === 0 ? fields.curves : fields.another, value, namesOf(desk, isRecord), put));
  });
}

/** The numbers among the fields of the first of some records, those of its own records too. */
function fieldsOf({ session }: Desk, [name = ""]: readonly string[]): string[] {
  const numbersIn = (shape: Shape | null | undefined): string[] =>
    shape?.kind !== "record"
      ? []
      : Object.entries(shape.fields).flatMap(([field, of]) =>
          of.kind === "number" ? [field] : numbersIn(of).map((inner) => `${field}.${inner}`),
        );
  return numbersIn(session.program.byName.get(name)?.shape);
}

const orNone = (detail: Detail): Detail => ({
  ...detail,
  choices: [["", fields.none], ...(detail.choices ?? [])],
});

/** Each quantity against x, and one more; one of them stays. */
function yDetails(names: readonly string[], { y = [] }: ChartCell, set: Set): Detail[] {
  return [...y, ""].map((value, index) => {
    const put = (now: string): void => {
      const all = [...y.slice(0, index), now, ...y.slice(index + 1)].filter((each) => each !== "");
      if (all.length > 0) set("y", { y: all });
    };
    const mayBeNone = y.length > 1 || index === y.length;
    const detail = chosen(index === 0 ? fields.y : fields.another, value, names, put);
    return mayBeNone ? orNone(detail) : detail;
  });
}

function chosen(label: string, value: string, names: readonly string[], set: (now: string) => void): Detail {
  return { label, value, choices: names.map((name) => [name, name]), set };
}
