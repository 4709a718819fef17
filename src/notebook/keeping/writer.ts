// Past 150 lines: one queue decides what is written next; its cases cannot be told apart in two files.
import type { Change } from "../change";
import type { Notebook } from "../model";
import type { Around } from "./around";
import type { Database, NotebookRecord, Place } from "./database";
import type { Line } from "./hold";
import { type Entry, stepEntry } from "./journal";
import { isLong, shorten } from "./load";
import { change, Superseded } from "./records";
import { entriesSize, snapshotSize } from "./sizes";
import { snapshotOf } from "./snapshot";
import { closedSentence, refusalSentence, type Standing, takenSentence } from "./standing";

/** After so many entries the whole state is written once more, should the journal be damaged. */
const checkEvery = 200;
/** What the database did not take is offered again after that time (milliseconds), and with every change. */
const again = 10_000;

/** A change that the database does not have yet; told as an entry only when it is written. */
interface Waiting {
  readonly seq: number;
  readonly entry: () => Entry;
  readonly after: Notebook;
}

/** Writes the changes of one notebook to the database, in order, each as soon as those before it are there. */
export class Writer {
  private waiting: readonly Waiting[] = [];
  private working: Promise<void> | undefined;
  private place: Place | undefined;
  private seq: number;
  private ended: Standing | undefined;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private now: Standing = { kind: "kept" };

  constructor(
    private readonly database: Database,
    private readonly line: Line,
    private readonly around: Pick<Around, "now">,
    private readonly holder: string,
    private record: NotebookRecord,
    private last: Notebook,
    private readonly tell: () => void,
  ) {
    this.seq = record.last;
  }

  get standing(): Standing {
    return this.now;
  }

  get kept(): NotebookRecord {
    return this.record;
  }

  /** The state after the changes so far, whether written or not. */
  get state(): Notebook {
    return this.last;
  }

  add({ way, label, at }: Pick<Change, "way" | "label" | "at">, after: Notebook): void {
    const seq = ++this.seq;
    const when = this.around.now();
    const before = this.last;
    this.last = after;
    let known: Entry | undefined;
    const entry = () => {
      known ??= way === "step" ? stepEntry(seq, when, { label, before, after, at }) : { seq, when, label, way };
      return known;
    };
    this.waiting = [...this.waiting, { seq, entry, after }];
    this.start();
  }

  remember(place: Place): void {
    this.place = place;
    this.start();
  }

  /** Waits until everything is written, or refused. @returns whether everything is in the database. */
  async flush(): Promise<boolean> {
    this.start();
    while (this.working !== undefined) await this.working;
    return this.waiting.length === 0 && !this.ended;
  }

  /** Changes something else of the notebook, in its turn; fails as the database does. */
  async amend(work: Parameters<typeof change>[3]): Promise<NotebookRecord> {
    await this.flush();
    this.record = await change(this.database, this.record.id, this.holder, work);
    return this.record;
  }

  /** Another window has the notebook now. */
  taken(): void {
    this.end({ kind: "taken", sentence: takenSentence, waiting: this.waiting.length });
  }

  /** The database was closed from outside. */
  closed(): void {
    this.end({ kind: "refused", sentence: closedSentence, waiting: this.waiting.length });
  }

  stop(): void {
    clearTimeout(this.timer);
    this.ended ??= this.now;
  }

  private end(standing: Standing): void {
    if (this.ended) return;
    clearTimeout(this.timer);
    this.ended = standing;
    this.stand(standing);
  }

  private stand(standing: Standing): void {
    this.now = standing;
    this.tell();
  }

  private start(): void {
    if (this.ended) {
      if ("waiting" in this.ended) this.stand({ ...this.ended, waiting: this.waiting.length });
      return;
    }
    if (this.working !== undefined || (this.waiting.length === 0 && !this.place)) return;
    clearTimeout(this.timer);
    if (this.now.kind === "kept" && this.waiting.length > 0) this.stand({ kind: "keeping" });
    this.working = this.work().finally(() => {
      this.working = undefined;
      // What came while the last of it was being done.
      if (this.now.kind !== "refused" && !this.ended) this.start();
    });
  }

  private async work(): Promise<void> {
    // Changes that are made in one go are written in one go.
    await Promise.resolve();
    try {
      while ((this.waiting.length > 0 || this.place) && !this.ended) await this.write();
      if (this.ended) return;
      if (this.now.kind !== "kept") this.stand({ kind: "kept" });
      if (isLong(this.record)) this.record = await shorten(this.database, this.record.id, this.holder);
    } catch (cause) {
      if (cause instanceof Superseded) {
        this.taken();
      } else if (!this.ended) {
        this.stand({ kind: "refused", sentence: refusalSentence(cause), waiting: this.waiting.length });
        this.timer = setTimeout(() => this.start(), again);
      }
    }
  }

  private async write(): Promise<void> {
    const batch = this.waiting;
    const { place } = this;
    const entries = batch.map(({ entry }) => entry());
    const final = batch.at(-1);
    this.record = await change(this.database, this.record.id, this.holder, (old, put) => {
      const kept = place ? { ...old, place } : old;
      if (!final) return kept;
      put.entries(entries);
      const isDue = final.seq - Math.max(old.check, old.base) >= checkEvery;
      const state = isDue ? snapshotOf(final.after) : undefined;
      if (state) put.snapshot("check", state);
      return {
        ...kept,
        title: final.after.about.title,
        pages: final.after.pages.length,
        changed: this.around.now(),
        last: final.seq,
        check: state ? final.seq : old.check,
        sizes: {
          ...old.sizes,
          journal: old.sizes.journal + entriesSize(entries),
          check: state ? snapshotSize(state) : old.sizes.check,
        },
      };
    });
    this.waiting = this.waiting.slice(batch.length);
    if (this.place === place) this.place = undefined;
    if (final) this.line.say({ kind: "kept", notebook: this.record.id, last: final.seq });
  }
}
