/** Every word of keeping: the line in the bar, the list of notebooks, who may edit, and what went wrong. */
import type { Hindrance } from "./shelf.ts";

const browser = "this browser";

export const words = {
  untitled: "Untitled notebook",

  // The line in the bar
  kept: (when: string) => `kept ${when}`,
  keptHint: `Kept in the storage of ${browser}. To hand it on, or to have it for long, save it as a file.`,
  notKept: "not kept",
  notKeptHint: "Your last changes are only on this screen. Save them to a file.",

  // What went wrong
  trouble: {
    full: `The storage of ${browser} is full, so your changes cannot be kept in it. Nothing is lost yet: save to a file, or delete notebooks under Notebooks. Each further edit tries again.`,
    refused: `${capital(browser)} does not let Spanwise store anything, as in a private window. Nothing is lost yet, but your changes end with this tab: save them to a file.`,
    later: `A later Spanwise keeps its notebooks in ${browser}, and this one cannot use its storage. Nothing is lost: load the page again for the later one, and save your changes to a file before.`,
    overwritten: "Another tab has changed this notebook meanwhile.",
  } satisfies Record<Hindrance, string>,
  unreadable: {
    full: `The storage of ${browser} could not be read. Load the page again to see your notebooks.`,
    refused: `${capital(browser)} does not let Spanwise read its storage, as in a private window, so the notebooks kept there cannot be shown. Files can be opened and saved all the same.`,
    later: `A later Spanwise keeps its notebooks in ${browser}, and this one cannot read them. Load the page again for the later one.`,
    overwritten: "Another tab has changed this notebook meanwhile.",
  } satisfies Record<Hindrance, string>,
  keptAgain: "There is room again: everything is kept.",
  damaged: (title: string, why: string) =>
    `“${title}” could not be opened. ${why} It is still kept: under Notebooks it can be downloaded or deleted.`,
  gone: `The notebook that this address names is not kept in ${browser}.`,
  noSuchStart: "There is no notebook of this name to begin with.",
  textMissing: "Its text is missing from the storage.",

  // Who may edit
  reading: "This notebook is open in another tab, which edits it. Here it can only be read.",
  given: "Another tab edits this notebook now; your last change was kept. Here it can only be read.",
  lost: "Another tab edits this notebook now, and your last changes here are not in it. Save them to a file, or go on with a copy.",
  free: "The other tab has closed this notebook. It can be edited here.",
  taking: "Asking the other tab for it …",
  unwilling: "The other tab has changes that it cannot keep. Save them to a file there first.",
  editHere: "Edit it here",
  editCopy: "Edit a copy",
  onlyRead: "This notebook can only be read here: another tab edits it.",
  onlyReadFree: "Press “Edit it here” at the top first.",
  copyOf: (title: string) => `${title} (copy)`,
  copied: (title: string) => `This is a copy now: ${title}.`,
  yours: "You edit this notebook here now.",

  // The list
  notebooks: "Notebooks",
  notebooksHint: `All notebooks kept in ${browser}`,
  keptHere: `Kept in ${browser}`,
  noneKept: "None yet. A notebook is kept as soon as you change something in it.",
  cannotList: "The list could not be read.",
  openHere: "open here",
  inNoFile: "in no file yet",
  inFile: (name: string) => `as in ${name}`,
  notInFile: (name: string) => `changed since ${name}`,
  asBegun: "as it came",
  whenKept: (when: string) => `kept ${when}`,
  remove: (title: string) => `Delete ${title}`,
  removeShort: "Delete",
  removed: (title: string) => `Deleted “${title}”.`,
  putBack: "Undo",
  isBack: (title: string) => `“${title}” is back.`,
  notBack: (title: string) => `“${title}” could not be put back: there is no room. Its text can be downloaded.`,
  isOpenElsewhere: (title: string) => `“${title}” is open in another tab. Close it there first.`,
  download: (title: string) => `Download ${title}`,
  downloadShort: "Download",
  faulty: "cannot be opened",
  beginNew: "Begin with",
  beginNewHint: "Opens a new copy; what comes with Spanwise stays as it is.",
  close: "Close",
} as const;

function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}
