import { functions } from "../../src/library/index.ts";
import { anyNumber, define, type FunctionTable, functionTable, text } from "../../src/library/spec.ts";

/** The library with one function more, `tick(value, label)`, which gives its value back and notes that it ran. */
export function countedFunctions(): { readonly table: FunctionTable; ran(): string } {
  let labels: string[] = [];
  const tick = define({
    name: "tick",
    summary: "The value itself.",
    topic: "test",
    parameters: { value: anyNumber("any number"), label: text("what is noted") },
    result: anyNumber("the value"),
    formula: "x",
    errors: [],
    assumptions: [],
    sources: [],
    examples: [],
    compute: ({ value, label }) => {
      labels.push(label);
      return value;
    },
  });
  return {
    table: functionTable([...functions.values(), tick]),
    /** What has run since it was last asked, in order of the alphabet. */
    ran() {
      const since = labels.sort().join(" ");
      labels = [];
      return since;
    },
  };
}
