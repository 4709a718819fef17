import { say } from "../../words/say";
import { History, type Step } from "../history";
import type { Notebook, Position } from "../model";
import { type Delta, deltaApplied, deltaOf } from "./delta";

/** A cell by number: of the page after the change, or, where it went with the change, -1 less its number before. */
type Place = readonly [page: number, row: number, column: number];

interface Moment {
  /** Counts all entries of a notebook, from 1. */
  readonly seq: number;
  /** Milliseconds of the computer's clock. */
  readonly when: number;
  readonly label: string;
}

/** One line of a notebook's journal: a new step, or that the last one was taken back or done again. */
export type Entry =
  | (Moment & { readonly way: "step"; readonly at: readonly Place[]; readonly delta: Delta })
  | (Moment & { readonly way: "undo" | "redo" });

const placesOf = (at: readonly Position[], before: Notebook, after: Notebook): Place[] =>
  at.flatMap(({ page, row, column }): Place[] => {
    const now = after.pages.findIndex(({ id }) => id === page);
    if (now >= 0) return [[now, row, column]];
    const then = before.pages.findIndex(({ id }) => id === page);
    return then >= 0 ? [[-1 - then, row, column]] : [];
  });

const positionsOf = (at: readonly Place[], before: Notebook, after: Notebook): Position[] =>
  at.flatMap(([number, row, column]) => {
    const page = number >= 0 ? after.pages[number] : before.pages[-1 - number];
    return page ? [{ page: page.id, row, column }] : [];
  });

export const stepEntry = (seq: number, when: number, { label, before, after, at }: Step): Entry => ({
  seq,
  when,
  label,
  way: "step",
  at: placesOf(at, before, after),
  delta: deltaOf(before, after),
});

/** A journal that cannot be followed further; `seq` is the entry that does not fit. */
export class JournalFault extends Error {
  constructor(
    readonly seq: number,
    cause: unknown,
  ) {
    super(say`entry ${seq}: ${cause instanceof Error ? cause.message : String(cause)}`);
  }
}

/** Follows a journal from a notebook on; history and all that is shared come about as they did. */
export class Replay {
  readonly history = new History();
  /** When each step of the history was made. */
  readonly whens = new WeakMap<Step, number>();

  constructor(private current: Notebook) {}

  get notebook(): Notebook {
    return this.current;
  }

  /** @throws JournalFault; nothing has changed then. */
  follow(entry: Entry): void {
    try {
      if (entry.way === "step") this.step(entry);
      else this.move(entry.way);
    } catch (cause) {
      throw new JournalFault(entry.seq, cause);
    }
  }

  private step({ label, at, when, delta }: Entry & { readonly way: "step" }): void {
    const before = this.current;
    const after = deltaApplied(before, delta);
    const step = { label, before, after, at: positionsOf(at, before, after) };
    this.history.add(step);
    this.whens.set(step, when);
    this.current = after;
  }

  private move(way: "undo" | "redo"): void {
    const step = way === "undo" ? this.history.back() : this.history.forward();
    if (!step) throw new Error(way === "undo" ? say`there is nothing to undo` : say`there is nothing to redo`);
    this.current = way === "undo" ? step.before : step.after;
  }
}
