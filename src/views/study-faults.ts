/** What is wrong with a study, at the field of its form that is at fault. */
import { readTarget, type StudyCell } from "../cells/index.ts";
import type { Desk } from "./desk.ts";
import type { FaultOf } from "./study-input-details.ts";

/** Tells of each field what is wrong with it: a name that is not there, or what has kept the study from being run. */
export function studyFaults({ session, studies }: Desk, cell: StudyCell): FaultOf {
  const result = session.result(cell.id);
  if (result && !result.ok)
    return faultsOfNames(cell, result.error.message, (name) => session.program.byName.get(name) !== undefined);
  const news = studies.news(cell.id);
  const fault = news?.status === "refused" ? news.fault : null;
  return (field, of) =>
    fault?.field === field && (fault.of === null || of === undefined || fault.of.trim() === of.trim())
      ? fault.sentence
      : undefined;
}

/** An error of the cell is one of what it names: the first that names nothing, or else the result. */
function faultsOfNames(cell: StudyCell, message: string, isKnown: (name: string) => boolean): FaultOf {
  const input = cell.inputs.find((each) => !isKnown(readTarget(each.input).name));
  const pair = cell.inputs.find((each) => each.pair !== undefined && !isKnown(readTarget(each.pair).name));
  const check = cell.checks?.find((each) => !isKnown(each.trim()));
  return (field, of) => {
    if (input) return field === "input" && of === input.input ? message : undefined;
    if (pair) return field === "pair" && of === pair.input ? message : undefined;
    if (check !== undefined) return field === "checks" && of === check ? message : undefined;
    return field === "result" && of !== undefined && (cell.results.length === 1 || !isKnownPath(of, isKnown))
      ? message
      : undefined;
  };
}

/** A result that begins with a name that is there; of a longer formula that is not told. */
const isKnownPath = (text: string, isKnown: (name: string) => boolean): boolean =>
  isKnown(/^\s*(\w+)/.exec(text)?.[1] ?? "");
