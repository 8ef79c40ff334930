import type { Fault } from "./entering.ts";
import { syntaxFault } from "./syntax-fault.ts";

/** How many texts are remembered at most. */
const most = 5000;

/** What is wrong with entries as texts; each text is looked at once. */
export class EntryFaults {
  private readonly faults = new Map<string, Fault | null>();

  of(text: string): Fault | null {
    if (isNumber(text)) return null;
    let fault = this.faults.get(text);
    if (fault === undefined) {
      if (this.faults.size > most) this.faults.clear();
      fault = syntaxFault(text);
      this.faults.set(text, fault);
    }
    return fault;
  }
}

/** True for a plain number, which needs no reading. */
export const isNumber = (text: string): boolean => /^-?(\d+\.?\d*|\.\d+)$/.test(text);
