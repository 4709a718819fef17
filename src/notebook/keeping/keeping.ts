// Past 150 lines: one class is the list of kept notebooks, with everything that is done to the list.
import { say } from "../../words/say";
import type { Notebook } from "../model";
import { Refusal } from "../refusal";
import { type Around, browserAround } from "./around";
import { type Database, type NotebookRecord, openDatabase } from "./database";
import { holdNotebook, Line } from "./hold";
import type { Kept } from "./kept";
import { openKept } from "./open-kept";
import { change, create, erase } from "./records";
import { recordSize, snapshotSize } from "./sizes";
import { snapshotOf } from "./snapshot";

/** A notebook in the list. Times in milliseconds of the computer's clock, size in characters. */
export interface Head {
  readonly id: string;
  readonly title: string;
  readonly pages: number;
  readonly versions: number;
  readonly size: number;
  readonly created: number;
  readonly changed: number;
  /** When it was deleted; it can be restored for 30 days. */
  readonly deleted: number | undefined;
}

/** The room for everything kept here, in bytes; `isLasting` when the browser does not clear it by itself. */
export interface Room {
  readonly used: number;
  readonly most: number;
  readonly isLasting: boolean;
}

const restorable = 30 * 24 * 3600 * 1000;

const headOf = (record: NotebookRecord): Head => ({
  id: record.id,
  title: record.title,
  pages: record.pages,
  versions: record.versions.length,
  size: recordSize(record),
  created: record.created,
  changed: record.changed,
  deleted: record.deleted,
});

/** A name that no other window and no other notebook has. */
const newName = (now: number): string =>
  `${now.toString(36)}-${[...crypto.getRandomValues(new Uint32Array(2))].map((part) => part.toString(36)).join("")}`;

/** The notebooks of this browser. */
export class Keeping {
  private readonly name: string;
  private readonly opened = new Map<string, Kept>();
  private readonly line: Line;

  constructor(
    private readonly database: Database,
    private readonly around: Around,
    private readonly closings: Set<() => void>,
  ) {
    this.name = newName(around.now());
    this.line = new Line(around);
  }

  /** All notebooks, the last changed first; the deleted ones among them as long as they can be restored. */
  async list(): Promise<readonly Head[]> {
    const records = await this.database.getAll("notebooks");
    return records.map(headOf).sort((a, b) => b.changed - a.changed);
  }

  /** The notebook that was open last, if any is left. */
  async lastOpened(): Promise<string | undefined> {
    const records = (await this.database.getAll("notebooks")).filter(({ deleted }) => deleted === undefined);
    return records.sort((a, b) => b.opened - a.opened)[0]?.id;
  }

  /** Keeps a notebook that was not kept so far, and opens it to be written. @throws the database's error. */
  async add(notebook: Notebook): Promise<Kept> {
    const base = snapshotOf(notebook);
    const now = this.around.now();
    const id = newName(now);
    const record: NotebookRecord = {
      id,
      title: notebook.about.title,
      pages: notebook.pages.length,
      created: now,
      changed: now,
      opened: now,
      sizes: { base: snapshotSize(base), check: 0, journal: 0 },
      last: 0,
      base: 0,
      check: 0,
      versions: [],
      holder: "",
    };
    await create(this.database, record, base);
    this.line.say({ kind: "list", notebook: "" });
    return this.keep(id, false, notebook);
  }

  /**
   * Opens a notebook, to be written when no other window has it, else to be read.
   *
   * @param takeOver takes it from the window that has it, which then only reads.
   * @throws Refusal when it is gone or cannot be read. @throws the database's error.
   */
  open(id: string, takeOver = false): Promise<Kept> {
    return this.keep(id, takeOver);
  }

  /** Deletes a notebook; it can be restored for 30 days. @throws Refusal when another window has it. */
  async remove(id: string): Promise<void> {
    // One that is only read here stays open when it cannot be deleted.
    if (this.opened.get(id)?.writes) await this.close(id);
    const hold = await holdNotebook(this.around, this.line, id, false, () => undefined);
    if (!hold) throw new Refusal(say`This notebook is open in another window: close it there first.`);
    await this.close(id);
    await this.mark(id, this.around.now()).finally(hold.release);
  }

  /** Brings a deleted notebook back as it was. */
  restore(id: string): Promise<void> {
    return this.mark(id, undefined);
  }

  /** Takes a notebook away for good, to make room; only one that was deleted before. @throws Refusal otherwise. */
  async erase(id: string): Promise<void> {
    const record = await this.database.get("notebooks", id);
    if (record && record.deleted === undefined)
      throw new Refusal(say`"${record.title}" is not deleted; delete it first.`);
    await erase(this.database, id);
    this.line.say({ kind: "list", notebook: "" });
    // There may be room now for what was refused before.
    for (const kept of this.opened.values()) await kept.flush();
  }

  /** Calls when another window has changed the list of notebooks. */
  subscribe(listener: () => void): () => void {
    return this.line.listen(({ kind }) => {
      if (kind === "list" || kind === "kept") listener();
    });
  }

  /** Asks the browser not to clear the database when the disk grows full. @returns whether it has agreed. */
  async persist(): Promise<boolean> {
    try {
      return (await this.around.storage?.persist?.()) ?? false;
    } catch {
      return false;
    }
  }

  /** Undefined where the browser does not say. */
  async room(): Promise<Room | undefined> {
    try {
      const { storage } = this.around;
      const estimate = await storage?.estimate?.();
      if (!estimate) return undefined;
      const isLasting = (await storage?.persisted?.()) ?? false;
      return { used: estimate.usage ?? 0, most: estimate.quota ?? 0, isLasting };
    } catch {
      return undefined;
    }
  }

  /** Takes deleted notebooks away for good when their time is over. */
  async tidy(): Promise<void> {
    const due = this.around.now() - restorable;
    const records = await this.database.getAll("notebooks");
    for (const { id, deleted } of records) if (deleted !== undefined && deleted < due) await erase(this.database, id);
  }

  /** Writes what is left of a notebook, or of all, and lets other windows have them. */
  async close(id?: string): Promise<void> {
    const closing = [...this.opened].filter(([one]) => id === undefined || one === id);
    for (const [one, kept] of closing) {
      this.opened.delete(one);
      await kept.close();
    }
    if (id !== undefined) return;
    this.line.close();
    this.database.close();
  }

  /** @param as the notebook as it is already shown, so that its pages stay the same ones. */
  private async keep(id: string, takeOver: boolean, as?: Notebook): Promise<Kept> {
    await this.close(id);
    const { database, around, line, closings } = this;
    const kept = await openKept({ database, around, line, closings, name: this.name, id, takeOver, as });
    this.opened.set(id, kept);
    return kept;
  }

  private async mark(id: string, deleted: number | undefined): Promise<void> {
    await change(this.database, id, undefined, ({ deleted: _old, ...record }) => ({
      ...record,
      ...(deleted === undefined ? {} : { deleted }),
      holder: "",
    }));
    this.line.say({ kind: "list", notebook: "" });
  }
}

/** Opens what this browser keeps. Where it keeps nothing, the sentence says why and what to do. */
export async function openKeeping(around: Around = browserAround()): Promise<Keeping | { readonly refused: string }> {
  const closings = new Set<() => void>();
  const database = await openDatabase(around.database, () => {
    for (const closed of closings) closed();
  });
  if ("refused" in database) return database;
  const keeping = new Keeping(database, around, closings);
  await keeping.tidy().catch(() => undefined);
  return keeping;
}
