import { compile } from "../../src/cells/compile.ts";
import { runPlan } from "../../src/cells/plan.ts";
import { functions } from "../../src/library/index.ts";
import { cellsOf, resultsText } from "./notebook-text.ts";
import { testTexts } from "./text-cases.ts";

testTexts("tests/cells/notebooks", (input, expected) => {
  const program = compile(cellsOf(input), functions);
  return resultsText(program, runPlan(program), expected);
});
