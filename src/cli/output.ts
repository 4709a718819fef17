/** What the person asked for cannot be done; the message is the one sentence that the terminal shows. */
export class Misuse extends Error {}

/** Where results go; tests put their own in its place. */
export interface Output {
  readonly write: (text: string) => void;
  /** A path as the person typed it, made absolute. */
  readonly path: (typed: string) => string;
  /** All of standard input. */
  readonly input: () => Promise<string>;
}

/** Columns padded to the same width; numbers stand to the right. */
export function columns(rows: readonly (readonly string[])[], right: (column: number) => boolean): string {
  const widths = rows.reduce<number[]>((most, row) => {
    row.forEach((text, i) => {
      most[i] = Math.max(most[i] ?? 0, text.length);
    });
    return most;
  }, []);
  return rows
    .map((row) =>
      row
        .map((text, i) => (right(i) ? text.padStart(widths[i] ?? 0) : text.padEnd(widths[i] ?? 0)))
        .join("  ")
        .trimEnd(),
    )
    .join("\n");
}
