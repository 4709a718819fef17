import { say } from "../../words/say";
import type { History } from "../history";
import type { Notebook } from "../model";
import { Refusal } from "../refusal";
import type { Database, NotebookRecord } from "./database";
import { type Entry, JournalFault, Replay } from "./journal";
import { change, gone } from "./records";
import { shortened } from "./shorten";
import { entriesSize, snapshotSize } from "./sizes";
import { notebookOf, type Snapshot, snapshotOf } from "./snapshot";

/** More entries, or more characters of them, than these are told anew with fewer. */
const most = { entries: 4000, size: 30_000_000 };

interface Stored {
  readonly record: NotebookRecord;
  readonly base: Snapshot | undefined;
  readonly check: Snapshot | undefined;
  readonly entries: readonly Entry[];
}

/** All that the database has of a notebook's present, as of one moment. @throws Refusal when it is gone. */
export async function stored(database: Database, id: string): Promise<Stored> {
  const transaction = database.transaction(["notebooks", "journal", "snapshots"]);
  const snapshots = transaction.objectStore("snapshots");
  const [record, base, check, entries] = await Promise.all([
    transaction.objectStore("notebooks").get(id),
    snapshots.get([id, "base"]),
    snapshots.get([id, "check"]),
    transaction.objectStore("journal").getAll(IDBKeyRange.bound([id, 0], [id, []])),
    transaction.done,
  ]);
  if (!record) throw gone();
  return { record, base: base?.state, check: check?.state, entries: entries.filter(({ seq }) => seq > record.base) };
}

/** A notebook as the journal leads to it. */
export interface Loaded {
  readonly notebook: Notebook;
  readonly history: History;
  /** The last entry that could be followed. */
  readonly last: number;
  /** Where the journal was damaged: the snapshot from which it could be followed, if not from the first. */
  readonly damage: { readonly from: "base" | "check" } | undefined;
}

function follow(start: Snapshot, seq: number, entries: readonly Entry[], until: number): Loaded {
  const replay = new Replay(notebookOf(start));
  let last = seq;
  const loaded = (damage: Loaded["damage"]) => ({ notebook: replay.notebook, history: replay.history, last, damage });
  for (const entry of entries) {
    if (entry.seq > until) break;
    try {
      if (entry.seq !== last + 1) throw new JournalFault(entry.seq, say`entry ${last + 1} is missing`);
      replay.follow(entry);
    } catch (cause) {
      if (cause instanceof JournalFault) return loaded({ from: "base" });
      throw cause;
    }
    last = entry.seq;
  }
  return loaded(undefined);
}

/**
 * Follows the journal, up to an entry when one is given. Where it is damaged, the later of two states counts: the
 * one before the damage, or the one that the second snapshot leads to.
 *
 * @throws Refusal when neither snapshot can be read.
 */
export function loaded({ record, base, check, entries }: Stored, until = Number.POSITIVE_INFINITY): Loaded {
  const whole = base && follow(base, record.base, entries, until);
  const wanted = Math.min(until, record.last);
  if (whole && whole.last >= wanted) return whole;
  const later = entries.filter(({ seq }) => seq > record.check);
  const second = check && record.check <= until ? follow(check, record.check, later, until) : undefined;
  if (second && second.last > (whole?.last ?? -1)) return { ...second, damage: { from: "check" } };
  if (whole) return { ...whole, damage: { from: "base" } };
  throw new Refusal(
    say`"${record.title}" is damaged in this browser's database: open one of its named versions or a file.`,
  );
}

/** Lets the journal end, or begin, where it could be followed, so that it can be gone on with. */
export const mend = (database: Database, id: string, holder: string, { last, damage }: Loaded, check?: Snapshot) =>
  change(database, id, holder, (old, put) => {
    put.dropEntries(last + 1);
    if (damage?.from !== "check" || !check) return { ...old, last };
    put.snapshot("base", check);
    put.dropEntries(0, old.check);
    return { ...old, last, base: old.check, sizes: { ...old.sizes, base: old.sizes.check } };
  });

export const isLong = ({ last, base, sizes }: NotebookRecord): boolean =>
  last - base > most.entries || sizes.journal > most.size;

/** Tells a journal that has grown long with fewer entries. @throws Superseded when another window has the notebook. */
export async function shorten(database: Database, id: string, holder: string): Promise<NotebookRecord> {
  const { record, base, entries } = await stored(database, id);
  if (!base) return record;
  const shorter = shortened({ base: notebookOf(base), seq: record.base, entries });
  const state = snapshotOf(shorter.base);
  return change(database, id, holder, (old, put) => {
    put.dropEntries(0, shorter.seq + shorter.entries.length);
    put.entries(shorter.entries);
    put.snapshot("base", state);
    return {
      ...old,
      base: shorter.seq,
      sizes: { ...old.sizes, base: snapshotSize(state), journal: entriesSize(shorter.entries) },
    };
  });
}
