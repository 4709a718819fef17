/** How one sequence became another: at a place some go and others come. All else is the same. */
export interface Splice<T> {
  readonly at: number;
  readonly drop: number;
  readonly put: T;
}

interface Sequence {
  readonly length: number;
  readonly [index: number]: string;
}

/** Where two texts, or two rows of texts, begin and cease to differ. */
function between(
  before: Sequence,
  after: Sequence,
): { readonly at: number; readonly drop: number; readonly end: number } {
  const most = Math.min(before.length, after.length);
  let at = 0;
  while (at < most && before[at] === after[at]) at++;
  let same = 0;
  while (same < most - at && before[before.length - 1 - same] === after[after.length - 1 - same]) same++;
  return { at, drop: before.length - same - at, end: after.length - same };
}

export function textSplice(before: string, after: string): Splice<string> {
  const { at, drop, end } = between(before, after);
  return { at, drop, put: after.slice(at, end) };
}

export const splicedText = (before: string, { at, drop, put }: Splice<string>): string =>
  before.slice(0, at) + put + before.slice(at + drop);

export function rowSplice(before: readonly string[], after: readonly string[]): Splice<readonly string[]> {
  const { at, drop, end } = between(before, after);
  return { at, drop, put: after.slice(at, end) };
}

export const splicedRow = (before: readonly string[], { at, drop, put }: Splice<readonly string[]>): string[] => [
  ...before.slice(0, at),
  ...put,
  ...before.slice(at + drop),
];
