import type { Step } from "../history";
import type { Notebook } from "../model";
import { type Entry, Replay, stepEntry } from "./journal";

/** A journal and the notebook it begins with; `seq` is the number of the entry before its first. */
export interface Journal {
  readonly base: Notebook;
  readonly seq: number;
  readonly entries: readonly Entry[];
}

/** Entries kept as they are, so that each of the last states can be gone back to, those on a path left too. */
const keptEntries = 200;
/** Characters of deltas that the older steps may take. */
const mostWeight = 10_000_000;

const weight = (entry: Entry): number => JSON.stringify(entry).length;

/** How many of the oldest steps have to go for their weight, at most so many. */
function tooHeavy(steps: readonly Entry[], most: number): number {
  let sum = 0;
  for (let i = steps.length - 1; i >= 0; i--) {
    sum += weight(steps[i] as Entry);
    if (sum > mostWeight) return Math.min(i + 1, most);
  }
  return 0;
}

/** How many of the done steps the coming entries never take back. */
function untouched(done: number, coming: readonly Entry[]): number {
  let depth = done;
  let least = done;
  for (const { way } of coming) {
    depth += way === "undo" ? -1 : 1;
    least = Math.min(least, depth);
  }
  return least;
}

/**
 * The same journal with fewer entries: those before the last ones are told anew as the steps that can still be
 * taken back or done again. The state after each kept entry, and the history there, stay as they were.
 *
 * @throws JournalFault when the journal cannot be followed.
 */
export function shortened({ base, seq, entries }: Journal, kept = keptEntries): Journal {
  const older = entries.slice(0, Math.max(0, entries.length - kept));
  const last = older.at(-1);
  if (!last) return { base, seq, entries };
  const replay = new Replay(base);
  for (const entry of older) replay.follow(entry);
  const { steps, done } = replay.history.all;
  const told = steps.map((step) => stepEntry(0, replay.whens.get(step) ?? last.when, step));
  const skip = tooHeavy(told, untouched(done, entries.slice(older.length)));
  const undone = steps
    .slice(done)
    .reverse()
    .map(({ label }): Entry => ({ seq: 0, when: last.when, label, way: "undo" }));
  const preface = [...told.slice(skip), ...undone];
  const start = last.seq - preface.length;
  const first: Step | undefined = steps[skip];
  return {
    base: first ? first.before : replay.notebook,
    seq: start,
    entries: [...preface.map((entry, i) => ({ ...entry, seq: start + 1 + i })), ...entries.slice(older.length)],
  };
}
