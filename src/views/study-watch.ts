/** Looking at a study: it is run while somebody does, and so is what tells how far its results are known. */
import type { Desk } from "./desk.ts";
import { bandStudy, bandStudyId } from "./study-bands.ts";

/** Watches the study of a cell, as the notebook now has it, and calls back at its news. Gives what ends it. */
export function watchStudy({ studies }: Desk, id: string, update: () => void): () => void {
  const stops = [
    studies.watch(
      id,
      (program) => {
        const cell = program.byId.get(id)?.cell;
        return cell?.kind === "study" ? { study: cell } : null;
      },
      update,
    ),
    studies.watch(bandStudyId(id), (program) => bandStudy(program, id), update),
  ];
  return () => {
    for (const stop of stops) stop();
  };
}
