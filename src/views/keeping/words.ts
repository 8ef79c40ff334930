/** Every word of keeping: in the bar, in the list of notebooks, on who may edit, and on what went wrong. */
import type { Hindrance } from "./shelf.ts";

export const words = {
  untitled: "Untitled notebook",

  // The bar
  kept: "kept",
  keptHint: "Kept in the storage of this browser. To hand it on, or to have it for long, save it as a file.",
  notKept: "not kept",
  notKeptHint: "Your last changes are only on this screen. Save them to a file.",

  // What went wrong
  trouble: {
    full: "The storage of this browser is full, so your last changes are not kept in it. They are still here: save them to a file, or delete old notebooks under Notebooks. The next change tries again.",
    refused:
      "This browser lets Spanwise store nothing, as some private windows do. Your changes are here as long as this tab is open: save them to a file before you close it.",
  } satisfies Record<Exclude<Hindrance, "overwritten">, string>,
  keptAgain: "Everything is kept again.",
  unreadable: "The storage of this browser could not be read. Load the page again; files can be opened all the same.",
  damaged: (title: string, why: string) =>
    `“${title}” could not be opened. ${why} It is still kept: under Notebooks it can be saved as a file, or deleted.`,
  gone: "This notebook is no longer kept in this browser.",
  textMissing: "Its text is missing from the storage.",

  // Who may edit
  reading: "Another tab edits this notebook. Here it can only be read, and follows along.",
  given: "Another tab edits this notebook now. Your last change is kept; here it can only be read.",
  lost: "Another tab edits this notebook now, and your last changes here are not in it. Save them to a file, or go on with a copy.",
  taking: "Asking the other tab for it …",
  refused: "The other tab has changes that it cannot keep. Save them to a file there first.",
  editHere: "Edit it here",
  editCopy: "Edit a copy",
  onlyRead: "It can only be read here, while another tab edits it. “Edit it here” is at the top.",
  copyOf: (title: string) => `${title} (copy)`,
  copied: (title: string) => `You edit a copy now: ${title}.`,
  yours: "You edit this notebook here now.",

  // The list
  notebooks: "Notebooks",
  notebooksHint: "All notebooks kept in this browser, and those to begin with",
  keptHere: "Kept in this browser",
  noneKept: "None yet. A notebook is kept as soon as you change something in it.",
  cannotList: "The storage of this browser cannot be read or written, so nothing is kept here. Save to files instead.",
  openHere: "open now",
  inFile: (name: string) => `as in ${name}`,
  notInFile: (name: string) => `changed since ${name}`,
  changed: (when: string) => `changed ${when}`,
  duplicate: "Duplicate",
  duplicateOf: (title: string) => `Duplicate ${title}`,
  duplicated: (title: string) => `Made “${title}”.`,
  save: "Save as file",
  saveOf: (title: string) => `Save as file: ${title}`,
  delete: "Delete",
  deleteOf: (title: string) => `Delete ${title}`,
  deleted: (title: string) => `Deleted “${title}”.`,
  putBack: "Bring it back",
  isBack: (title: string) => `“${title}” is back.`,
  failed: "That did not work: the storage of this browser is full or cannot be written.",
  openElsewhere: (title: string) => `“${title}” is being edited in another tab. Close it there first.`,
  beginNew: "Begin with",
  beginNewHint: "You get one of your own; what comes with Spanwise stays as it is.",
  close: "Close",

  // When
  justNow: "just now",
  minutesAgo: (count: number) => `${count} min ago`,
  today: (time: string) => `today at ${time}`,
  on: (date: string) => `on ${date}`,
} as const;
