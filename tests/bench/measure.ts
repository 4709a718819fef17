import { cpus, loadavg, totalmem } from "node:os";

/** Something whose time is taken; `once` runs it a fixed number of times. */
export interface Contender {
  readonly name: string;
  readonly once: () => void;
  /** Runs inside one `once`, so that times are told for one. */
  readonly runs: number;
}

export interface Timing {
  readonly name: string;
  /** Median time of one run in microseconds. */
  readonly micros: number;
  readonly rounds: readonly number[];
}

export const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return ((sorted[(sorted.length - 1) >> 1] ?? 0) + (sorted[sorted.length >> 1] ?? 0)) / 2;
};

/** The value that a share of all values lies below: 0.95 for p95. */
export const part = (values: readonly number[], share: number): number =>
  [...values].sort((a, b) => a - b)[Math.min(values.length - 1, Math.floor(share * values.length))] ?? Number.NaN;

/**
 * Times contenders in turns, one after the other in every round, so that whatever else the machine does falls on all
 * alike; the first round warms up and does not count.
 */
export function alternate(contenders: readonly Contender[], rounds = 11): Timing[] {
  const times = contenders.map((): number[] => []);
  for (let round = 0; round <= rounds; round++) {
    contenders.forEach(({ once, runs }, i) => {
      const began = performance.now();
      once();
      const micros = ((performance.now() - began) * 1000) / runs;
      if (round > 0) times[i]?.push(micros);
    });
  }
  return contenders.map(({ name }, i) => ({ name, micros: median(times[i] ?? []), rounds: times[i] ?? [] }));
}

/** Median over the rounds of one contender's time over another's in the same round. */
export const ratio = (a: Timing, b: Timing): number => median(a.rounds.map((one, i) => one / (b.rounds[i] ?? 1)));

export const machineLine = (): string =>
  `${cpus().length} × ${cpus()[0]?.model.trim()}, ${(totalmem() / 2 ** 30).toFixed(0)} GiB, Node ${process.versions.node}, ` +
  `V8 ${process.versions.v8}, load ${loadavg()
    .map((one) => one.toFixed(1))
    .join(" ")}`;

/** A table in plain text; numbers stand to the right. */
export function table(rows: readonly (readonly string[])[]): string {
  const widths = rows.reduce<number[]>((most, row) => row.map((cell, i) => Math.max(most[i] ?? 0, cell.length)), []);
  const line = (row: readonly string[]) =>
    row.map((cell, i) => (i === 0 ? cell.padEnd(widths[i] ?? 0) : cell.padStart(widths[i] ?? 0))).join("  ");
  return rows.map(line).join("\n");
}

export const short = (value: number): string =>
  value >= 100 ? value.toFixed(0) : value >= 10 ? value.toFixed(1) : value.toPrecision(2);
