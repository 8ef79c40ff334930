/** What can be said of a cell of each kind beside its name and formula. */
import {
  type Cell,
  type CellPatch,
  type DecisionCell,
  type DerivedCell,
  editCell,
  type GivenCell,
  type Step,
} from "../cells/index.ts";
import { chartDetails } from "./chart-details.ts";
import type { Desk } from "./desk.ts";
import type { Detail } from "./details.ts";
import { viewsOf } from "./figures.ts";
import { entriesOf, isNumber, isRecord, namesOf, pathsOf } from "./named-cells.ts";
import { words as sheetWords } from "./sheet-cell-words.ts";
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
    case "sheet":
      return [
        path(
          "of",
          fields.of,
          cell.of,
          pathsOf(desk, isRecord, (shape) => shape.kind === "record" && shape.type === "pattern"),
        ),
        choice("paper", sheetWords.fields.paper, cell.paper ?? "A4", ["A4", "A3", "Letter"]),
        choice("lies", sheetWords.fields.lies, cell.lies ?? "upright", ["upright", "across"]),
        optional("title", fields.title, cell.title),
      ];
    case "chart":
      return [...chartDetails(desk, cell, set), optional("title", fields.title, cell.title)];
    case "study":
      return studyDetails(
        desk,
        cell,
        {
          inputs: [...namesOf(desk, isGiven), ...entriesOf(desk)],
          results: pathsOf(desk, isNumber, (shape) => shape.kind === "number"),
          checks: namesOf(desk, (step) => step.cell.kind === "check"),
          trials: desk.session.own.trials.map(({ name }) => name),
        },
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

const isAskable = ({ definition }: Step): boolean => definition === null;
const isGiven = ({ cell, shape }: Step): boolean => cell.kind === "given" && shape?.kind === "number";
