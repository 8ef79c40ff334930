import type { ReactiveController, ReactiveControllerHost } from "lit";
import { type Block, blockText, clearBlock, putBlock, readBlock, type TableCell } from "../cells/index.ts";
import type { Desk } from "./desk.ts";
import { tell } from "./notice.ts";
import { blockBetween, isWithin, type Place } from "./table-places.ts";
import { words } from "./words.ts";

/** The table on the page, as far as choosing in it goes. */
export interface TableHost extends ReactiveControllerHost, HTMLElement {
  readonly desk: Desk;
  readonly cell: TableCell;
  /** The part that is being entered, null at rest. */
  readonly entered: string | null;
}

/**
 * What is chosen in a table: the entry that has or had the focus, and a block of entries from there, which is copied, cut,
 * pasted and cleared as one.
 */
export class TableChoice implements ReactiveController {
  private here: Place = { row: 0, column: 0 };
  /** The other end of the block; null where only one entry is chosen. */
  private anchor: Place | null = null;

  constructor(private readonly host: TableHost) {
    host.addController(this);
  }

  hostConnected(): void {
    for (const name of clipboardEvents) document.addEventListener(name, this.clipboard);
  }

  hostDisconnected(): void {
    for (const name of clipboardEvents) document.removeEventListener(name, this.clipboard);
  }

  /** The entry, or the head of a row (column −1) or of a column (row −1), that has or had the focus. */
  get place(): Place {
    return this.here;
  }

  get block(): Block {
    return blockBetween(this.here, this.anchor ?? this.here);
  }

  /** True where more than one entry is chosen, or may be. */
  get isBlock(): boolean {
    return this.anchor !== null;
  }

  readonly isHere = ({ row, column }: Place): boolean => row === this.here.row && column === this.here.column;

  readonly isInBlock = (place: Place): boolean => this.isBlock && isWithin(this.block, place);

  /** Takes note of where the focus has come to. */
  stand(place: Place): void {
    if (this.isHere(place)) return;
    this.take(place);
  }

  /** Chooses one entry. */
  take(place: Place): void {
    this.here = place;
    this.drop();
  }

  /** Chooses one entry and gives it the focus. */
  readonly focus = async (place: Place): Promise<void> => {
    this.take(place);
    await this.host.updateComplete;
    const at = this.host.querySelector<HTMLElement>(`[data-place="${place.row}:${place.column}"]`);
    (at ?? this.host.querySelector<HTMLElement>(".name-button"))?.focus();
  };

  /** Lets the block reach to an entry; from the head of a row or column there is none. */
  extend(place: Place): void {
    if (this.here.row < 0 || this.here.column < 0) return;
    this.span(this.anchor ?? this.here, { row: Math.max(0, place.row), column: Math.max(0, place.column) });
  }

  all(): void {
    const { rows, columns } = this.host.cell;
    this.span({ row: 0, column: 0 }, { row: rows.length - 1, column: columns.length - 1 });
  }

  /** Leaves one entry chosen. */
  drop(): void {
    this.anchor = null;
    this.host.requestUpdate();
  }

  clear(): void {
    const { desk, cell } = this.host;
    desk.session.edit((notebook) => clearBlock(notebook, cell.id, this.block));
  }

  /** Copying, cutting and pasting are the browser's own commands, wherever the person finds them. */
  private readonly clipboard = (event: ClipboardEvent): void => {
    const { host } = this;
    const active = document.activeElement;
    const isOurs = host.entered === null && active?.closest(".entries tbody td") && host.contains(active);
    if (!isOurs || !event.clipboardData) return;
    event.preventDefault();
    if (event.type === "paste") {
      this.paste(event.clipboardData.getData("text/plain"));
      return;
    }
    event.clipboardData.setData("text/plain", blockText(host.cell, this.block));
    if (event.type === "cut") this.clear();
  };

  private paste(text: string): void {
    const { desk, cell } = this.host;
    const entries = readBlock(text);
    const from = { row: this.block.rows[0], column: this.block.columns[0] };
    desk.session.edit((notebook) => putBlock(notebook, cell.id, from.row, from.column, entries));
    const width = Math.max(...entries.map((row) => row.length));
    const room = cell.columns.length - from.column;
    if (width > room) tell(words.leftOff(width - room));
    this.span(from, { row: from.row + entries.length - 1, column: from.column + Math.min(width, room) - 1 });
  }

  /** The block between two entries, the focus on the second. */
  private async span(anchor: Place, to: Place): Promise<void> {
    await this.focus(to);
    this.anchor = anchor;
    this.host.requestUpdate();
  }
}

const clipboardEvents = ["copy", "cut", "paste"] as const;
