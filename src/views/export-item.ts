/** The way from a figure on the screen to a picture or a file of values; what makes them comes when it is asked for. */
import { exportWords as words } from "./export-words.ts";
import type { MenuItem } from "./menu.ts";
import { tell } from "./notice.ts";
import type { ShownFigure } from "./shown-figure.ts";

/** The item of a menu that offers to copy or save a figure. */
export const exportItem = (anchor: HTMLElement, shown: ShownFigure): MenuItem => ({
  label: words.item,
  act: () =>
    void import("./export/export-menu.ts")
      .then(({ openExportMenu }) => openExportMenu(anchor, shown))
      .catch(() => tell(words.notLoaded)),
});
