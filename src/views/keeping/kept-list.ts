import { fileNameOf, saveFile } from "../files.ts";
import type { Keeping } from "./keeping.ts";
import type { Entry, Kept } from "./kept.ts";
import { readKept } from "./kept-reader.ts";
import { Pen } from "./pen.ts";
import { shippedTitles } from "./shipped.ts";

/** What can be done with the notebooks that are kept: seen, found faulty, deleted, put back. */
export class KeptList {
  /** What is wrong with a notebook as it stood at a revision. */
  private readonly faults = new Map<string, string | null>();

  constructor(private readonly keeping: Keeping) {}

  /** What is kept, the latest first. @throws ShelfError */
  entries(): Promise<readonly Entry[]> {
    return this.keeping.shelf.entries();
  }

  /** What comes with the app to begin with, by name and title. */
  starts(): Promise<readonly (readonly [name: string, title: string])[]> {
    return shippedTitles(this.keeping.app.shipped);
  }

  /** What is wrong with a kept notebook; null where it can be opened. Each is looked through once. */
  async faultOf({ id, revision }: Entry): Promise<string | null> {
    const key = `${id} ${revision}`;
    let fault = this.faults.get(key);
    if (fault === undefined) {
      const found = await readKept(this.keeping.shelf, id);
      fault = "fault" in found ? found.fault : null;
      this.faults.set(key, fault);
    }
    return fault;
  }

  /** Deletes a notebook and gives what was deleted; null where another tab has it open to edit. @throws ShelfError */
  async remove(id: string): Promise<Kept | null> {
    const { shelf, channel, open } = this.keeping;
    const isOpen = open?.id === id;
    if (isOpen) await open.flush();
    const pen = new Pen(id, navigator.locks, () => undefined);
    const isOurs = isOpen && open.phase === "writing";
    if (!isOurs && !(await pen.take())) return null;
    try {
      const kept = await shelf.get(id);
      if (isOpen) await this.keeping.replace(() => shelf.remove(id));
      else await shelf.remove(id);
      channel.say("deleted", id);
      return kept ?? null;
    } finally {
      pen.lay();
    }
  }

  /** Puts back what was deleted. @throws ShelfError */
  async putBack(kept: Kept): Promise<void> {
    await this.keeping.shelf.put(kept, { after: null, withSaved: true });
    this.keeping.channel.say("kept", kept.entry.id);
  }

  /** Saves the text of a notebook as a file, as it stands in the storage. */
  async download({ id, title }: Entry): Promise<void> {
    const kept = await this.keeping.shelf.get(id);
    if (kept) await saveFile(fileNameOf(title), kept.text ?? "", null);
  }
}
