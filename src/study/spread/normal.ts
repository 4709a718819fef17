import { normalQuantile } from "../../tables/normal-quantile";

/** Below this share the far tail of the algorithm would begin; no sample of a study lies there. */
const leastShare = Math.exp(-25);

const coefficients = (letter: string): readonly number[] =>
  Object.entries(normalQuantile)
    .filter(([name]) => new RegExp(`^${letter}\\d$`).test(name))
    .map(([, { value }]) => value);

const [a, b, c, d] = ["a", "b", "c", "d"].map(coefficients) as [number[], number[], number[], number[]];
const { reach, square, shift } = normalQuantile;

/** c0 + c1 x + c2 x² ... */
const polynomial = (of: readonly number[], x: number): number => of.reduceRight((sum, one) => sum * x + one, 0);
/** 1 + d1 x + d2 x² ... */
const below = (of: readonly number[], x: number): number => polynomial(of, x) * x + 1;

/**
 * The standard normal value that a share of all cases lies below, for shares from e^-25 to 1 − e^-25 (Wichura's
 * algorithm with the coefficients of the table; 16 digits).
 */
export function normalAt(share: number): number {
  const q = share - 0.5;
  if (Math.abs(q) <= reach.value) {
    const r = square.value - q * q;
    return (q * polynomial(a, r)) / below(b, r);
  }
  const r = Math.sqrt(-Math.log(Math.max(leastShare, Math.min(share, 1 - share)))) - shift.value;
  const size = polynomial(c, r) / below(d, r);
  return q < 0 ? -size : size;
}

/**
 * The share of all cases below a standard normal value: 1/2 + φ(x)(x + x³/3 + x⁵/(3·5) + ...), the series that comes
 * from integrating φ by parts. All terms have one sign, so nothing cancels; beyond 8 the share is 0 or 1 to 15 digits.
 */
export function normalShare(x: number): number {
  if (x > 8) return 1;
  if (x < -8) return 0;
  let term = x;
  let sum = x;
  for (let i = 3; Math.abs(term) > 1e-17 * Math.abs(sum); i += 2) {
    term *= (x * x) / i;
    sum += term;
  }
  return 0.5 + (sum * Math.exp((-x * x) / 2)) / Math.sqrt(2 * Math.PI);
}
