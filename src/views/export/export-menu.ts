/** Copies and saves a figure: as a picture in lines or dots, and its values. */

import { exportWords as words } from "../export-words.ts";
import { fileNameOf, offerFile } from "../files.ts";
import { type MenuItem, openMenu } from "../menu.ts";
import { tell } from "../notice.ts";
import type { ShownFigure } from "../shown-figure.ts";
import { drawingLook } from "./drawing-look.ts";
import { csvOf } from "./figure-tables.ts";
import { paintedPicture } from "./painted-picture.ts";
import { sheetPicture } from "./sheet-picture.ts";

/** Opens the menu at an element. */
export function openExportMenu(anchor: HTMLElement, shown: ShownFigure): void {
  const { session } = shown.desk;
  const source = { notebook: session.own.title, trial: session.trial?.name ?? null };
  const nameOf = (ending: string): string => fileNameOf(`${source.notebook} ${shown.title}`, ending);
  const picture = (): SVGElement =>
    sheetPicture(
      shown.element,
      { title: shown.title, shows: shown.shows, from: words.from(source.notebook, source.trial) },
      drawingLook,
    );
  const svg = (): string => new XMLSerializer().serializeToString(picture());
  const { numbers } = shown;
  const files: readonly FileOffer[] = [
    {
      save: words.saveSvg,
      copy: words.copySvg,
      hint: words.svgHint,
      what: words.picture,
      ending: "svg",
      type: "image/svg+xml",
      make: async () => text(svg(), "image/svg+xml"),
    },
    {
      save: words.savePng,
      copy: words.copyPng,
      hint: words.pngHint,
      what: words.picture,
      ending: "png",
      type: "image/png",
      make: () => paintedPicture(picture(), { document }),
    },
    ...(numbers
      ? [
          {
            save: words.saveCsv,
            copy: words.copyCsv,
            hint: words.csvHint,
            what: words.values,
            ending: "csv",
            type: "text/csv",
            make: async () => text(csvOf(numbers, { ...source, title: shown.title, shows: shown.shows }), "text/csv"),
          },
        ]
      : []),
  ];
  openMenu(anchor, words.menu(shown.title), [
    ...files.map(
      (file): MenuItem => ({ label: file.save, hint: file.hint, act: () => void save(file, nameOf(file.ending)) }),
    ),
    ...files.map((file, index): MenuItem => ({ label: file.copy, parted: index === 0, act: () => void copy(file) })),
  ]);
}

interface FileOffer {
  readonly save: string;
  readonly copy: string;
  readonly hint: string;
  readonly what: string;
  readonly ending: string;
  readonly type: string;
  make(): Promise<Blob>;
}

const text = (content: string, type: string): Blob => new Blob([content], { type: `${type};charset=utf-8` });

async function save({ make, ending, type }: FileOffer, name: string): Promise<void> {
  try {
    const saved = await offerFile(name, await make(), { [type]: [`.${ending}`] });
    if (saved !== null) tell(words.saved(saved));
  } catch (error) {
    tell(words.cannotSave(error instanceof Error ? error.message : String(error)));
  }
}

/** A picture in dots goes as such, everything else as text, which every program takes. */
async function copy({ make, what, type }: FileOffer): Promise<void> {
  try {
    // The browser must be told at once that something is copied; what it is may follow.
    if (type === "image/png") await navigator.clipboard.write([new ClipboardItem({ [type]: make() })]);
    else await navigator.clipboard.writeText(await (await make()).text());
    tell(words.copied(what));
  } catch {
    tell(words.cannotCopy);
  }
}
