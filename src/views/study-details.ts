/** What can be said of a study: what it asks, what it sets, what it tells, and how. */
import { type CellPatch, rename, type StudyCell, type StudyInput, studyLimits, tidyName } from "../cells/index.ts";
import type { Desk } from "./desk.ts";
import type { Detail } from "./details.ts";
import { tell } from "./notice.ts";
import { words } from "./words.ts";

const { fields, studies } = words;

export interface StudyOffers {
  /** Givens that a study can set. */
  readonly inputs: readonly string[];
  /** Numbers that it can tell of. */
  readonly results: readonly string[];
}

/** The details of a study; those that its sort has no use for are left out, and kept in the notebook all the same. */
export function studyDetails(
  { session }: Desk,
  cell: StudyCell,
  offers: StudyOffers,
  set: (key: string, patch: CellPatch) => void,
): Detail[] {
  const put: Put = (key, patch) => set(key, { ...patch, ...goalsOf({ ...cell, ...patch } as StudyCell) });
  const renameTo = (name: string): void => {
    try {
      session.edit((notebook) => rename(notebook, cell.id, tidyName(name), session.functions));
    } catch (error) {
      tell(words.notRenamed(cell.name, error instanceof Error ? error.message : String(error)));
    }
  };
  return [
    { label: fields.name, value: cell.name, late: true, set: renameTo },
    {
      label: fields.study,
      value: cell.study,
      choices: Object.entries(studies),
      set: (now) => put("study", { study: now as StudyCell["study"] }),
    },
    ...inputDetails(cell, offers.inputs, put),
    ...resultDetails(cell, offers.results, put),
    ...ownDetails(cell, put),
    { label: fields.title, value: cell.title ?? "", set: (now) => put("title", { title: filled(now) }) },
    {
      label: fields.reason,
      value: cell.reason ?? "",
      isLong: true,
      set: (now) => put("reason", { reason: filled(now) }),
    },
  ] satisfies Detail[];
}

type Patch<T> = { [K in keyof T]?: T[K] | undefined };
type Put = (key: string, patch: Patch<StudyCell>) => void;

/** Each input, and one more; one whose name is taken away goes. */
function inputDetails({ study, inputs }: StudyCell, offers: readonly string[], put: Put): Detail[] {
  return [...inputs, { input: "" }].flatMap((input: StudyInput, index) => {
    const change: Change = (patch) => {
      const now = without({ ...input, ...patch });
      put("inputs", { inputs: [...inputs.slice(0, index), ...(now.input ? [now] : []), ...inputs.slice(index + 1)] });
    };
    const own = study === "tolerance" || study === "sensitivity" ? spread : span;
    const label = index === 0 ? fields.input : fields.anotherInput;
    const name: Detail = { label, value: input.input, offers, late: true, set: (now) => change({ input: now.trim() }) };
    return index === inputs.length ? [name] : [name, ...own(input, study, change)];
  });
}

type Change = (patch: Patch<StudyInput>) => void;

/** Over what an input goes; where nothing is said, over the range that the given has. */
function span({ range, points }: StudyInput, study: StudyCell["study"], change: Change): Detail[] {
  const [from = "", to = ""] = range ?? [];
  const ends = (low: string, high: string): void =>
    change({ range: filled(low + high) === undefined ? undefined : [low, high] });
  return [
    { label: fields.from, value: from, beside: true, late: true, set: (now) => ends(now, to) },
    { label: fields.to, value: to, beside: true, late: true, set: (now) => ends(from, now) },
    ...(study === "sweep" || study === "map"
      ? [whole(fields.points, points, studyLimits.points, (now) => change({ points: now }))]
      : []),
  ];
}

/** How far an input may be off; where nothing is said, by the ± that the given has. */
function spread({ plus_minus, law }: StudyInput, study: StudyCell["study"], change: Change): Detail[] {
  return [
    {
      label: fields.plusMinus,
      value: plus_minus ?? "",
      beside: true,
      late: true,
      set: (now) => change({ plus_minus: filled(now) }),
    },
    ...(study === "tolerance"
      ? [
          {
            label: fields.law,
            value: law ?? "uniform",
            beside: true,
            choices: Object.entries(words.laws),
            set: (now: string) => change({ law: now as NonNullable<StudyInput["law"]> }),
          },
        ]
      : []),
  ];
}

/** Each result, and one more; of best with what it is to be. */
function resultDetails({ study, results, goals = [] }: StudyCell, offers: readonly string[], put: Put): Detail[] {
  return [...results, ""].flatMap((result, index) => {
    const change = (now: string): void => {
      const kept = filled(now);
      const rest = kept ? goals : goals.filter((_, each) => each !== index);
      put("results", {
        results: [...results.slice(0, index), ...(kept ? [now.trim()] : []), ...results.slice(index + 1)],
        ...(study === "best" ? { goals: rest } : {}),
      });
    };
    const name: Detail = {
      label: index === 0 ? fields.result : fields.anotherResult,
      value: result,
      offers,
      late: true,
      set: change,
    };
    if (study !== "best" || index === results.length) return [name];
    const aim = (now: string): void =>
      put("goals", {
        goals: results.map((_, each) => (each === index ? (now as "least" | "most") : (goals[each] ?? "least"))),
      });
    return [
      name,
      { label: fields.goal, value: goals[index] ?? "", beside: true, choices: Object.entries(words.goals), set: aim },
    ];
  });
}

function ownDetails({ study, target, builds }: StudyCell, put: Put): Detail[] {
  if (study === "solve") {
    return [
      { label: fields.target, value: target ?? "", late: true, set: (now) => put("target", { target: filled(now) }) },
    ];
  }
  if (study === "tolerance")
    return [whole(fields.builds, builds, studyLimits.builds, (now) => put("builds", { builds: now }))];
  return [];
}

/** A count of at least 2; what is no number takes it away, so that the usual one holds. */
function whole(label: string, value: number | undefined, most: number, put: (now: number | undefined) => void): Detail {
  const read = (text: string): number | undefined => {
    const number = Math.round(Number(text.replaceAll(/\s/g, "")));
    return text.trim() === "" || !Number.isFinite(number) ? undefined : Math.min(most, Math.max(2, number));
  };
  return {
    label,
    value: String(value ?? ""),
    beside: label === fields.points,
    late: true,
    set: (now) => put(read(now)),
  };
}

/** Of best every result has a goal. */
function goalsOf({ study, results, goals }: StudyCell): Pick<StudyCell, "goals"> {
  if (study !== "best") return {};
  return { goals: results.map((_, index) => goals?.[index] ?? "least") };
}

const filled = (text: string): string | undefined => (text.trim() === "" ? undefined : text);

const without = (input: object): StudyInput =>
  Object.fromEntries(Object.entries(input).filter(([, value]) => value !== undefined)) as unknown as StudyInput;
