/** What can be said of a study: what it asks, what it sets, what it tells, and how. */
import { type CellPatch, rename, type StudyCell, studyLimits, tidyName } from "../cells/index.ts";
import type { Desk } from "./desk.ts";
import { type Detail, wholeDetail } from "./details.ts";
import { tell } from "./notice.ts";
import { studyFaults } from "./study-faults.ts";
import { studyFields } from "./study-fields.ts";
import { type FaultOf, inputDetails } from "./study-input-details.ts";
import { words } from "./words.ts";

const { fields, studies } = words;

export interface StudyOffers {
  /** Givens and table entries that a study can set. */
  readonly inputs: readonly string[];
  /** Numbers that it can tell of. */
  readonly results: readonly string[];
  readonly checks: readonly string[];
  readonly trials: readonly string[];
}

/** The details of a study; those that its sort has no use for are left out, and kept in the notebook all the same. */
export function studyDetails(
  desk: Desk,
  cell: StudyCell,
  offers: StudyOffers,
  set: (key: string, patch: CellPatch) => void,
): Detail[] {
  const { session } = desk;
  const faultOf = studyFaults(desk, cell);
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
    ...inputDetails(cell, offers.inputs, faultOf, (inputs) => put("inputs", { inputs })),
    ...resultDetails(cell, offers.results, faultOf, put),
    ...ownDetails(cell, offers, faultOf, put),
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

/** Each result, and one more; of best with what it is to be. */
function resultDetails(
  { study, results, goals = [] }: StudyCell,
  offers: readonly string[],
  faultOf: FaultOf,
  put: Put,
): Detail[] {
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
      isKept: true,
      fault: index < results.length ? faultOf("result", result) : results.length === 0 ? faultOf("result") : undefined,
      set: change,
    };
    if (study !== "best" || index === results.length) return [name];
    const aim = (now: string): void =>
      put("goals", {
        goals: results.map((_, each) => (each === index ? (now as "least" | "most") : (goals[each] ?? "least"))),
      });
    return [
      name,
      {
        label: fields.goal,
        value: goals[index] ?? "",
        beside: true,
        choices: Object.entries(words.goals),
        fault: faultOf("goal"),
        set: aim,
      },
    ];
  });
}

function ownDetails(cell: StudyCell, offers: StudyOffers, faultOf: FaultOf, put: Put): Detail[] {
  const { study, target, builds, seed } = cell;
  if (study === "solve") {
    const set = (now: string): void => put("target", { target: filled(now) });
    const fault = faultOf("target");
    return [{ label: fields.target, value: target ?? "", late: true, isKept: true, fault, set }];
  }
  return [
    ...checkDetails(cell, offers.checks, faultOf, put),
    ...(study === "sweep" || cell.trials ? trialDetails(cell, offers.trials, faultOf, put) : []),
    ...(study === "tolerance"
      ? [
          wholeDetail(
            { label: fields.builds, hint: "2000" },
            { value: builds, least: 2, most: studyLimits.builds },
            (now) => put("builds", { builds: now }),
          ),
        ]
      : []),
    ...(study === "tolerance" || study === "best"
      ? [
          wholeDetail(
            { label: studyFields.seed, hint: "1", beside: study === "tolerance" },
            { value: seed, least: 0, most: studyLimits.seed },
            (now) => put("seed", { seed: now }),
          ),
        ]
      : []),
  ];
}

/** All checks, none, or each that counts and one more. */
function checkDetails({ checks }: StudyCell, offers: readonly string[], faultOf: FaultOf, put: Put): Detail[] {
  const named = checks ?? [];
  const choices = offers.map((name) => [name, name] as const);
  const change = (index: number, now: string): void => {
    const next = [...named.slice(0, index), ...(now === "" ? [] : [now]), ...named.slice(index + 1)];
    put("checks", { checks: now === all ? undefined : next });
  };
  const first: Detail = {
    label: studyFields.checks,
    value: checks ? (named[0] ?? "") : all,
    choices: [[all, studyFields.allChecks], ["", studyFields.noCheck], ...choices],
    fault: faultOf("checks", named[0]),
    set: (now) => change(0, now),
  };
  if (named.length === 0) return [first];
  return [
    first,
    ...[...named.slice(1), ""].map(
      (name, index): Detail => ({
        label: studyFields.anotherCheck,
        value: name,
        choices: [["", fields.none], ...choices],
        fault: name ? faultOf("checks", name) : undefined,
        beside: true,
        set: (now) => change(index + 1, now),
      }),
    ),
  ];
}

const all = "*";

/** Each trial that has a curve of its own, and one more. */
function trialDetails({ trials = [] }: StudyCell, offers: readonly string[], faultOf: FaultOf, put: Put): Detail[] {
  if (offers.length + trials.length === 0) return [];
  return [...trials, ""].map((name, index): Detail => {
    const set = (now: string): void => {
      const next = [...trials.slice(0, index), ...(now === "" ? [] : [now]), ...trials.slice(index + 1)];
      put("trials", { trials: next.length > 0 ? next : undefined });
    };
    return {
      label: index === 0 ? studyFields.trials : studyFields.anotherTrial,
      value: name,
      choices: [["", fields.none], ...offers.map((each) => [each, each] as const)],
      fault: name ? faultOf("trials", name) : undefined,
      beside: index > 0,
      set,
    };
  });
}

/** Of best every result has a goal. */
function goalsOf({ study, results, goals }: StudyCell): Pick<StudyCell, "goals"> {
  if (study !== "best") return {};
  return { goals: results.map((_, index) => goals?.[index] ?? "least") };
}

const filled = (text: string): string | undefined => (text.trim() === "" ? undefined : text);
