import { show } from "./formula-show.ts";
import { testTexts } from "./text-cases.ts";

testTexts("tests/cells/formulas", (input) => input.split("\n").map(show).join("\n"));
