/** What a study comes to, on a sheet of the board. */
import type { StudyCell } from "../cells/index.ts";
import type { Figure, FigureContext } from "./figure.ts";
import { bandStudyId } from "./study-bands.ts";
import { StudyPicture } from "./study-outcome.ts";
import { words } from "./study-words.ts";

export function studyFigure(first: FigureContext<StudyCell>): Figure | string {
  const picture = new StudyPicture();
  const draw = ({ desk, cell, height }: FigureContext<StudyCell>): string | null => {
    const news = desk.studies.news(cell.id);
    if (!news?.outcome) return news?.message ?? words.told(news ?? { status: "waiting", progress: 0, left: null });
    const { outcome, isOld, status } = news;
    const known = desk.studies.news(bandStudyId(cell.id))?.outcome;
    const isBusy = status === "running" || status === "waiting";
    picture.show({ desk, cell, outcome, isOld, isBusy, height, known: known?.study === "sensitivity" ? known : null });
    return null;
  };
  const problem = draw(first);
  if (problem !== null) return problem;
  return {
    element: picture.element,
    get picture() {
      return picture.figure?.element ?? null;
    },
    get numbers() {
      return picture.figure?.numbers ?? null;
    },
    draw: (context) => draw(context as FigureContext<StudyCell>),
  };
}
