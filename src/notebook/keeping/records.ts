import { say } from "../../words/say";
import { Refusal } from "../refusal";
import type { Database, NotebookRecord, SnapshotKey } from "./database";
import type { Entry } from "./journal";
import type { Snapshot } from "./snapshot";

/** Another window writes this notebook now. */
export class Superseded extends Error {}

type Store = "notebooks" | "journal" | "snapshots";
const stores: Store[] = ["notebooks", "journal", "snapshots"];

/** "strict": done when the disk has it, not only the system's memory, so that a power cut does not take it back. */
const begin = (database: Database) =>
  database.transaction<Store[], "readwrite">(stores, "readwrite", { durability: "strict" });

export const gone = (): Refusal => new Refusal(say`This notebook is no longer kept in this browser; open another.`);

/** Everything in a store whose keys begin with a notebook's id, or its numbers from `from` on. */
const allOf = (id: string, from = Number.NEGATIVE_INFINITY): IDBKeyRange => IDBKeyRange.bound([id, from], [id, []]);

/** What one transaction writes of one notebook. Its failures show when the transaction ends. */
export class Put {
  constructor(
    private readonly transaction: ReturnType<typeof begin>,
    private readonly notebook: string,
  ) {}

  record(record: NotebookRecord): void {
    this.note(this.transaction.objectStore("notebooks").put(record));
  }

  entries(entries: readonly Entry[]): void {
    const journal = this.transaction.objectStore("journal");
    for (const entry of entries) this.note(journal.put({ ...entry, notebook: this.notebook }));
  }

  snapshot(key: SnapshotKey, state: Snapshot): void {
    this.note(this.transaction.objectStore("snapshots").put({ notebook: this.notebook, key, state }));
  }

  dropSnapshot(key: SnapshotKey): void {
    this.note(this.transaction.objectStore("snapshots").delete([this.notebook, key]));
  }

  /** Takes away the entries with these numbers; all from `from` on when `to` is left out. */
  dropEntries(from: number, to?: number): void {
    const range =
      to === undefined ? allOf(this.notebook, from) : IDBKeyRange.bound([this.notebook, from], [this.notebook, to]);
    if (to === undefined || to >= from) this.note(this.transaction.objectStore("journal").delete(range));
  }

  dropAll(): void {
    this.note(this.transaction.objectStore("journal").delete(allOf(this.notebook)));
    this.note(this.transaction.objectStore("snapshots").delete(allOf(this.notebook)));
    this.note(this.transaction.objectStore("notebooks").delete(this.notebook));
  }

  private note(request: Promise<unknown>): void {
    request.catch(() => undefined);
  }
}

/** Runs one transaction; nothing of it is kept when it throws. */
async function transact<T>(
  database: Database,
  id: string,
  work: (old: NotebookRecord | undefined, put: Put) => T,
): Promise<T> {
  const transaction = begin(database);
  // Awaited below, unless something is thrown before.
  transaction.done.catch(() => undefined);
  try {
    const old = await transaction.objectStore("notebooks").get(id);
    const result = work(old, new Put(transaction, id));
    await transaction.done;
    return result;
  } catch (cause) {
    try {
      transaction.abort();
    } catch {
      // It has ended by itself.
    }
    throw cause;
  }
}

/** Puts a new notebook into the database. */
export const create = (database: Database, record: NotebookRecord, base: Snapshot): Promise<void> =>
  transact(database, record.id, (_none, put) => {
    put.record(record);
    put.snapshot("base", base);
  });

/**
 * Changes what is kept of a notebook, all of it or nothing.
 *
 * @param holder the window that must have the notebook, or undefined when any may write.
 * @param work writes, and gives the new record.
 * @throws Superseded when another window has it. @throws Refusal when it is gone.
 */
export const change = (
  database: Database,
  id: string,
  holder: string | undefined,
  work: (old: NotebookRecord, put: Put) => NotebookRecord,
): Promise<NotebookRecord> =>
  transact(database, id, (old, put) => {
    if (holder !== undefined && old?.holder !== holder) throw new Superseded(id);
    if (!old) throw gone();
    const record = work(old, put);
    put.record(record);
    return record;
  });

export const erase = (database: Database, id: string): Promise<void> =>
  transact(database, id, (_old, put) => put.dropAll());
