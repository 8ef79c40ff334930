import { dimensionless } from "../../src/library/quantity.ts";
import { type Computed, type Entry, holdLedger } from "../references/ledger.ts";
import entries from "../references/studies/studies.json" with { type: "json" };
import { outcome, type StudyFields } from "./studies/study-cases.ts";

/** A notebook written short, a study of it, and the path to one number of what the study comes to: `results/0/sample/mean`. */
interface Input {
  readonly text: string;
  readonly study: StudyFields;
  readonly take: string;
}

holdLedger("studies", entries as unknown as readonly Entry<Input>[], ({ text, study, take }): Computed => {
  const found = take.split("/").reduce<unknown>(stepInto, outcome(text, study));
  if (typeof found !== "number") throw new Error(`got no number at "${take}"`);
  return { value: found, dimension: dimensionless };
});

const stepInto = (value: unknown, key: string): unknown => (value as Readonly<Record<string, unknown>>)[key];
