/** Trials that are kept row by row before they are put down. */
const blockLength = 32;

/**
 * The numbers of many trials, taken in trial by trial and kept result by result. They are put down in blocks of
 * trials: to write to hundreds of places far apart after every trial would take as long as calculating it.
 */
export class Trials {
  readonly columns: readonly Float64Array[];
  private readonly rows: readonly Float64Array[];
  private done = 0;
  private waiting = 0;

  constructor(results: number, trials: number) {
    this.columns = Array.from({ length: results }, () => new Float64Array(trials));
    this.rows = Array.from({ length: blockLength }, () => new Float64Array(results));
  }

  /** Where the next trial's results go, in their order; `take` takes them in. */
  get next(): Float64Array {
    return this.rows[this.waiting] as Float64Array;
  }

  take(): void {
    this.waiting++;
    if (this.waiting === blockLength) this.putDown();
  }

  /** To be called after the last trial. */
  putDown(): void {
    const { columns, rows, done, waiting } = this;
    for (let i = 0; i < columns.length; i++) {
      const column = columns[i] as Float64Array;
      for (let k = 0; k < waiting; k++) column[done + k] = (rows[k] as Float64Array)[i] as number;
    }
    this.done += waiting;
    this.waiting = 0;
  }
}
