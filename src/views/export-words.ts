/** Every word of copying and saving figures. */
export const exportWords = {
  item: "Copy or save this figure…",
  menu: (title: string) => `copy or save ${title}`,
  saveSvg: "Save as SVG",
  savePng: "Save as PNG",
  saveCsv: "Save its values as CSV",
  copySvg: "Copy as SVG",
  copyPng: "Copy as PNG",
  copyCsv: "Copy its values as CSV",
  svgHint: "lines, for print",
  pngHint: "dots, for a page",
  csvHint: "numbers, for a table",
  copied: (what: string) => `Copied ${what}.`,
  saved: (name: string) => `Saved ${name}.`,
  cannotCopy: "The browser did not let it be copied. Save it to a file instead.",
  cannotSave: (why: string) => `It could not be saved: ${why}`,
  notLoaded: "What makes pictures could not be loaded. Is there a connection?",
  from: (notebook: string, trial: string | null) =>
    trial === null ? `from the notebook “${notebook}”` : `from the notebook “${notebook}”, trial “${trial}”`,
  head: { title: "title", shows: "shows", notebook: "notebook", trial: "trial" },
  picture: "the picture",
  values: "the values",
} as const;
