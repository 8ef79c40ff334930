/**
 * A pupil's reason and, below an empty line, why the prediction and the value differ: the two parts of a question's
 * `because`. The reason itself has no empty line.
 */
export interface Because {
  readonly reason: string;
  readonly difference: string;
}

/** Takes the two parts apart; without an empty line all of it is the reason. */
export function splitBecause(because: string): Because {
  const at = because.indexOf("\n\n");
  return at < 0
    ? { reason: because, difference: "" }
    : { reason: because.slice(0, at), difference: because.slice(at + 2) };
}

/** Puts the two parts together, blanks at their ends left off. */
export function joinBecause({ reason, difference }: Because): string {
  const first = reason.trim().replaceAll(/\n\s*\n/g, "\n");
  const second = difference.trim();
  return second === "" ? first : `${first}\n\n${second}`;
}
