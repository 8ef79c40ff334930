/** What can be said of a cell of each kind beside its name and formula. */
import {
  type Cell,
  type CellPatch,
  type ChartCell,
  type DecisionCell,
  type DerivedCell,
  editCell,
  type GivenCell,
  type Step,
} from "../cells/index.ts";
import type { Shape } from "../library/index.ts";
import type { Desk } from "./desk.ts";
import type { Detail } from "./details.ts";
import { viewsOf } from "./figures.ts";
import { studyDetails } from "./study-details.ts";
import { words } from "./words.ts";

const { fields } = words;

/** The details of a cell, each with what sets it; those of a table are its columns', which it enters in its own way. */
export function detailsOf(desk: Desk, cell: Cell): Detail[] {
  const set = (key: string, patch: CellPatch): void =>
    desk.session.edit((notebook) => editCell(notebook, cell.id, patch), `detail ${cell.id} ${key}`);
  const text = (key: string, label: string, value: string | undefined, hint = ""): Detail => ({
    label,
    value: value ?? "",
    hint,
    set: (now) => set(key, { [key]: value === undefined && now === "" ? undefined : now } as CellPatch),
  });
  const optional = (key: string, label: string, value: string | undefined, hint = ""): Detail => ({
    ...text(key, label, value, hint),
    set: (now) => set(key, { [key]: now.trim() === "" ? undefined : now } as CellPatch),
  });
  const long = (key: string, label: string, value: string | undefined, hint = ""): Detail => ({
    ...text(key, label, value, hint),
    isLong: true,
  });
  const path = (key: string, label: string, value: string, offers: readonly string[]): Detail => ({
    ...text(key, label, value),
    offers,
    late: true,
  });
  const choice = (key: string, label: string, value: string, choices: readonly string[]): Detail => ({
    label,
    value,
    choices: choices.map((each) => [each, each]),
    set: (now) => set(key, { [key]: now } as CellPatch),
  });
  switch (cell.kind) {
    case "given":
      return [
        optional("unit", fields.unit, cell.unit, "mm"),
        ...rangeDetails(cell, set),
        optional("plus_minus", fields.plusMinus, cell.plus_minus),
        ...fractionDetail(cell, set),
      ];
    case "derived":
      return [optional("unit", fields.unit, cell.unit, "mm"), ...fractionDetail(cell, set)];
    case "decision":
      return [
        long("question", fields.question, cell.question),
        long("chosen", fields.chosen, cell.chosen),
        long("why", fields.why, cell.why),
        ...alternativeDetails(cell, set),
        { ...optional("revisit", fields.revisit, cell.revisit), isLong: true },
      ];
    case "question":
      return [
        path(
          "about",
          fields.about,
          cell.about,
          pathsOf(desk, isAskable, () => true),
        ),
        long("prompt", fields.prompt, cell.prompt, words.noPromptYet(cell.about)),
      ];
    case "drawing":
      return [
        choice("view", fields.view, cell.view, viewsOf("drawing")),
        path(
          "of",
          fields.of,
          cell.of,
          pathsOf(desk, isRecord, (shape) => shape.kind === "record"),
        ),
        optional("title", fields.title, cell.title),
      ];
    case "chart":
      return [
        choice("view", fields.view, cell.view, viewsOf("chart")),
        choice("sweep", fields.sweep, cell.sweep ?? "", namesOf(desk, hasRange)),
        choice("x", fields.x, cell.x ?? "", namesOf(desk, isNumber)),
        ...yDetails(desk, cell, set),
        optional("title", fields.title, cell.title),
      ];
    case "study":
      return studyDetails(
        desk,
        cell,
        { inputs: namesOf(desk, isGiven), results: pathsOf(desk, isNumber, (shape) => shape.kind === "number") },
        set,
      );
    case "note":
    case "check":
    case "table":
      return [];
  }
}

type Set = (key: string, patch: CellPatch) => void;

/** Lowest and highest belong together: both are there, or neither. */
function rangeDetails({ range, unit = "" }: GivenCell, set: Set): Detail[] {
  const [from = "", to = "", step = ""] = range ?? [];
  const put = (ends: readonly string[]): void => {
    const isEmpty = ends.every((each) => each.trim() === "");
    const kept = ends[2]?.trim() ? ends : ends.slice(0, 2);
    set("range", { range: isEmpty ? undefined : kept });
  };
  const like = (number: string): string => `${number} ${unit}`.trim();
  return [
    { label: fields.from, value: from, hint: like("0"), beside: true, set: (now) => put([now, to, step]) },
    { label: fields.to, value: to, hint: like("10"), beside: true, set: (now) => put([from, now, step]) },
    { label: fields.step, value: step, hint: like("0.5"), beside: true, set: (now) => put([from, to, now]) },
  ];
}

/** Shop fractions are for inches. */
function fractionDetail({ unit, fraction }: GivenCell | DerivedCell, set: Set): Detail[] {
  if (unit !== "in" && fraction === undefined) return [];
  const parts = [2, 4, 8, 16, 32, 64] as const;
  return [
    {
      label: fields.fraction,
      value: String(fraction ?? ""),
      choices: [["", fields.decimals], ...parts.map((each) => [String(each), fields.fractionOf(each)] as const)],
      set: (now) => set("fraction", { fraction: parts.find((each) => String(each) === now) }),
    },
  ];
}

/** Each alternative as two texts, and two more for another; one whose texts are both empty goes. */
function alternativeDetails({ alternatives = [] }: DecisionCell, set: Set): Detail[] {
  const put = (index: number, option: string, whyNot: string): void => {
    const isEmpty = option === "" && whyNot === "";
    const now = [...alternatives.slice(0, index), ...(isEmpty ? [] : [{ option, why_not: whyNot }])];
    const all = [...now, ...alternatives.slice(index + 1)];
    set("alternatives", { alternatives: all.length === 0 ? undefined : all });
  };
  return [...alternatives, { option: "", why_not: "" }].flatMap(({ option, why_not }, index) => [
    { label: fields.option, value: option, isLong: true, set: (now: string) => put(index, now, why_not) },
    { label: fields.whyNot, value: why_not, isLong: true, beside: true, set: (now: string) => put(index, option, now) },
  ]);
}

/** Each curve of a chart, and one more; one of them stays. */
function yDetails(desk: Desk, { y = [] }: ChartCell, set: Set): Detail[] {
  const names = namesOf(desk, isNumber);
  return [...y, ""].map((value, index) => ({
    label: index === 0 ? fields.y : fields.another,
    value,
    choices: [...(y.length > 1 || index === y.length ? [["", fields.none] as const] : []), ...names.map(pair)],
    set: (now) => {
      const all = [...y.slice(0, index), now, ...y.slice(index + 1)].filter((each) => each !== "");
      if (all.length > 0) set("y", { y: all });
    },
  }));
}

const pair = (name: string): readonly [string, string] => [name, name];

/** Names of the cells that fit, in the order of the notebook. */
function namesOf({ session }: Desk, fits: (step: Step) => boolean): string[] {
  const { notebook, program } = session;
  return notebook.cells.flatMap(({ id }) => {
    const step = program.byId.get(id);
    return step?.name && fits(step) ? [step.name] : [];
  });
}

/** As namesOf, each followed by those of its fields that fit. */
function pathsOf(desk: Desk, fits: (step: Step) => boolean, fieldFits: (shape: Shape) => boolean): string[] {
  const { program } = desk.session;
  return namesOf(desk, fits).flatMap((name) => {
    const shape = program.byName.get(name)?.shape;
    const parts = shape?.kind === "record" ? Object.entries(shape.fields) : [];
    return [name, ...parts.filter(([, part]) => fieldFits(part)).map(([part]) => `${name}.${part}`)];
  });
}

const isAskable = ({ definition }: Step): boolean => definition === null;
const isRecord = ({ cell, shape }: Step): boolean => cell.kind !== "table" && shape?.kind === "record";
const isNumber = ({ cell, shape }: Step): boolean => cell.kind !== "check" && shape?.kind === "number";
const isGiven = ({ cell, shape }: Step): boolean => cell.kind === "given" && shape?.kind === "number";
const hasRange = ({ range }: Step): boolean => range !== null;
