// A program for bundle.test.ts: prints its arguments and ends with its own exit code.
import { table } from "../../src/tools/table.js";

const told: string = table([process.argv.slice(2)]);
console.log(told.split("\n")[0]);
process.exitCode = 7;
