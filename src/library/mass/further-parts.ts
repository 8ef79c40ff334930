import type { FieldValues } from "../spec.ts";
import { type Part, partRecord } from "./part-record.ts";

const further = {
  ...partRecord,
  summary: "a part with its own inertia, or several taken as one",
  optional: true,
} as const;

/** Parts that may follow one after the other: lists of the formula language cannot hold them. */
export const furtherParts = {
  part_1: further,
  part_2: further,
  part_3: further,
  part_4: further,
  part_5: further,
  part_6: further,
  part_7: further,
  part_8: further,
};

/** Those that were given, in order. */
export const partsIn = (values: FieldValues<typeof furtherParts>): readonly Part[] =>
  Object.keys(furtherParts).flatMap((name) => values[name as keyof typeof furtherParts] ?? []);
