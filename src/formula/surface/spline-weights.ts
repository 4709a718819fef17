/** How much each known value counts for the value at one place, and for the slope there. */
export interface Weights {
  readonly value: readonly number[];
  readonly slope: readonly number[];
}

/** Reads between known places; outside the first and the last it goes on with the end's own curve. */
export type Reader = (x: number) => Weights;

const interval = (xs: readonly number[], x: number): number => {
  let i = 0;
  while (i < xs.length - 2 && x > (xs[i + 1] as number)) i++;
  return i;
};

/** Straight lines from place to place. */
export function straightReader(xs: readonly number[]): Reader {
  return (x) => {
    const i = interval(xs, x);
    const [a, b] = [xs[i] as number, xs[i + 1] as number];
    const value = xs.map(() => 0);
    const slope = xs.map(() => 0);
    value[i] = (b - x) / (b - a);
    value[i + 1] = (x - a) / (b - a);
    slope[i] = -1 / (b - a);
    slope[i + 1] = 1 / (b - a);
    return { value, slope };
  };
}

/** Up to four places: the one polynomial through them, in Lagrange's form. */
function polynomialReader(xs: readonly number[]): Reader {
  return (x) => {
    const others = (i: number) => xs.filter((_, k) => k !== i);
    const product = (factors: readonly number[]) => factors.reduce((all, one) => all * one, 1);
    const below = xs.map((own, i) => product(others(i).map((other) => own - other)));
    return {
      value: xs.map((_, i) => product(others(i).map((other) => x - other)) / (below[i] as number)),
      slope: xs.map((_, i) => {
        const rest = others(i);
        const sum = rest.reduce(
          (all, _one, k) => all + product(rest.filter((_, j) => j !== k).map((other) => x - other)),
          0,
        );
        return sum / (below[i] as number);
      }),
    };
  };
}

/** Solves a full system for several right sides at once, by elimination with the largest pivot first. */
function solve(matrix: number[][], right: number[][]): number[][] {
  const n = matrix.length;
  for (let k = 0; k < n; k++) {
    let best = k;
    for (let i = k + 1; i < n; i++) {
      if (Math.abs(matrix[i]?.[k] as number) > Math.abs(matrix[best]?.[k] as number)) best = i;
    }
    [matrix[k], matrix[best]] = [matrix[best] as number[], matrix[k] as number[]];
    [right[k], right[best]] = [right[best] as number[], right[k] as number[]];
    const [row, side] = [matrix[k] as number[], right[k] as number[]];
    for (let i = 0; i < n; i++) {
      if (i === k) continue;
      const factor = (matrix[i]?.[k] as number) / (row[k] as number);
      if (factor === 0) continue;
      for (let j = k; j < n; j++) (matrix[i] as number[])[j] = (matrix[i]?.[j] as number) - factor * (row[j] as number);
      for (let j = 0; j < side.length; j++)
        (right[i] as number[])[j] = (right[i]?.[j] as number) - factor * (side[j] as number);
    }
  }
  return right.map((side, i) => side.map((value) => value / (matrix[i]?.[i] as number)));
}

/**
 * The cubic spline through all places that is one cubic over its first two and over its last two intervals
 * (not-a-knot): of the smooth curves through the points it needs no slope at the ends, and it gives back every cubic.
 *
 * @param xs rising, at least three.
 */
export function splineReader(xs: readonly number[]): Reader {
  const n = xs.length;
  if (n <= 4) return polynomialReader(xs);
  const h = (i: number): number => (xs[i + 1] as number) - (xs[i] as number);
  // Unknown are the second derivatives; each known value in turn is 1 and the others 0.
  const matrix = xs.map(() => xs.map(() => 0));
  const right = xs.map(() => xs.map(() => 0));
  const put = (row: number, entries: readonly (readonly [number, number])[], into = matrix) => {
    for (const [column, value] of entries) (into[row] as number[])[column] = value;
  };
  put(0, [
    [0, h(1)],
    [1, -(h(0) + h(1))],
    [2, h(0)],
  ]);
  put(n - 1, [
    [n - 3, h(n - 2)],
    [n - 2, -(h(n - 3) + h(n - 2))],
    [n - 1, h(n - 3)],
  ]);
  for (let i = 1; i < n - 1; i++) {
    put(i, [
      [i - 1, h(i - 1)],
      [i, 2 * (h(i - 1) + h(i))],
      [i + 1, h(i)],
    ]);
    put(
      i,
      [
        [i - 1, 6 / h(i - 1)],
        [i, -6 / h(i - 1) - 6 / h(i)],
        [i + 1, 6 / h(i)],
      ],
      right,
    );
  }
  const bend = solve(matrix, right);
  return (x) => {
    const i = interval(xs, x);
    const d = h(i);
    const b = (x - (xs[i] as number)) / d;
    const a = 1 - b;
    const [first, second] = [bend[i] as number[], bend[i + 1] as number[]];
    const value = first.map((one, k) => ((a ** 3 - a) * one + (b ** 3 - b) * (second[k] as number)) * ((d * d) / 6));
    const slope = first.map((one, k) => ((1 - 3 * a * a) * one + (3 * b * b - 1) * (second[k] as number)) * (d / 6));
    value[i] = (value[i] as number) + a;
    value[i + 1] = (value[i + 1] as number) + b;
    slope[i] = (slope[i] as number) - 1 / d;
    slope[i + 1] = (slope[i + 1] as number) + 1 / d;
    return { value, slope };
  };
}
