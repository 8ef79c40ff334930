/** What can be said of each input of a study: over what it goes, or how far it may be off. */
import { type StudyCell, type StudyField, type StudyInput, studyLimits } from "../cells/index.ts";
import { type Detail, wholeDetail } from "./details.ts";
import { studyFields } from "./study-fields.ts";
import { words } from "./words.ts";

const { fields } = words;

type Patch<T> = { [K in keyof T]?: T[K] | undefined };
type Change = (patch: Patch<StudyInput>) => void;

/** What is wrong with a field of the study, of an input or result where it is that of one; undefined where nothing is. */
export type FaultOf = (field: StudyField, of?: string) => string | undefined;

/** Each input, and one more; one whose name is taken away goes. */
export function inputDetails(
  { study, inputs }: StudyCell,
  offers: readonly string[],
  faultOf: FaultOf,
  put: (inputs: readonly StudyInput[]) => void,
): Detail[] {
  return [...inputs, { input: "" }].flatMap((input: StudyInput, index) => {
    const change: Change = (patch) => {
      const now = without({ ...input, ...patch });
      put([...inputs.slice(0, index), ...(now.input ? [now] : []), ...inputs.slice(index + 1)]);
    };
    const isMore = index === inputs.length;
    const name: Detail = {
      label: index === 0 ? fields.input : fields.anotherInput,
      value: input.input,
      offers,
      late: true,
      isKept: true,
      // That there are too few is said where the next can be named; too many, at the last.
      fault: isMore ? faultOf("inputs") : faultOf("input", input.input),
      set: (now) => change({ input: now.trim() }),
    };
    if (isMore) return [name];
    const fault = (field: StudyField): string | undefined => faultOf(field, input.input) ?? undefined;
    if (study === "tolerance")
      return [name, ...spread(input, fault, change), ...pairDetails(input, offers, fault, change)];
    return [name, ...(study === "sensitivity" ? [plusMinus(input, fault, change)] : span(input, study, fault, change))];
  });
}

type FieldFault = (field: StudyField) => string | undefined;

/** Over what an input goes; where nothing is said, over the range that the given has. */
function span({ range, points }: StudyInput, study: StudyCell["study"], fault: FieldFault, change: Change): Detail[] {
  const [from = "", to = ""] = range ?? [];
  const ends = (low: string, high: string): void =>
    change({ range: (low + high).trim() === "" ? undefined : [low, high] });
  const own = { beside: true, late: true, isKept: true } as const;
  return [
    { ...own, label: fields.from, value: from, fault: fault("range"), set: (now) => ends(now, to) },
    { ...own, label: fields.to, value: to, set: (now) => ends(from, now) },
    ...(study === "sweep" || study === "map"
      ? [
          wholeDetail(
            { ...own, label: fields.points, fault: fault("points") },
            { value: points, least: 2, most: studyLimits.points },
            (now) => change({ points: now }),
          ),
        ]
      : []),
  ];
}

/** How far an input may be off; where nothing is said, by the ± that the given has. */
const plusMinus = ({ plus_minus }: StudyInput, fault: FieldFault, change: Change): Detail => ({
  label: fields.plusMinus,
  value: plus_minus ?? "",
  ...{ beside: true, late: true, isKept: true, fault: fault("plus_minus") },
  set: (now) => change({ plus_minus: now.trim() === "" ? undefined : now }),
});

const spread = (input: StudyInput, fault: FieldFault, change: Change): Detail[] => [
  plusMinus(input, fault, change),
  {
    label: fields.law,
    value: input.law ?? "uniform",
    beside: true,
    choices: Object.entries(words.laws),
    set: (now: string) => change({ law: now as NonNullable<StudyInput["law"]> }),
  },
];

/** The same of the other half of a wing whose halves are built apart, and how far the two go together. */
function pairDetails(
  { pair, correlation }: StudyInput,
  offers: readonly string[],
  fault: FieldFault,
  change: Change,
): Detail[] {
  const setPair = (now: string): void => {
    const text = now.trim();
    change(text === "" ? { pair: undefined, correlation: undefined } : { pair: text });
  };
  const setCorrelation = (now: string): void => {
    const number = Number(now.trim().replace("−", "-").replace(",", "."));
    const isTold = now.trim() !== "" && Number.isFinite(number);
    change({ correlation: isTold ? Math.max(-1, Math.min(1, number)) : undefined });
  };
  const own = { beside: true, late: true, isKept: true } as const;
  return [
    { ...own, label: studyFields.pair, value: pair ?? "", offers, fault: fault("pair"), set: setPair },
    ...(pair === undefined && correlation === undefined
      ? []
      : [
          {
            ...own,
            label: studyFields.correlation,
            value: String(correlation ?? ""),
            hint: "0",
            fault: fault("correlation"),
            set: setCorrelation,
          },
        ]),
  ];
}

const without = (input: object): StudyInput =>
  Object.fromEntries(Object.entries(input).filter(([, value]) => value !== undefined)) as unknown as StudyInput;
