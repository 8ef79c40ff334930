import { FormulaError, parseFormula } from "../cells/index.ts";
import type { Fault } from "./entering.ts";

/** What is wrong with a formula as a text, before anything is known of the names in it; null where it can be read. */
export function syntaxFault(text: string): Fault | null {
  try {
    parseFormula(text);
    return null;
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    return { at: error.at, message: error.message, waits: false };
  }
}
