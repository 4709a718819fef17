import { normalQuantile } from "../../tables/normal-quantile";

/** Below this share the far tail of the algorithm would begin; no sample of a study lies there. */
const leastShare = Math.exp(-25);

const coefficients = (letter: string): readonly number[] =>
  Object.entries(normalQuantile)
    .filter(([name]) => new RegExp(`^${letter}\\d$`).test(name))
    .map(([, { value }]) => value);

const [a, b, c, d] = ["a", "b", "c", "d"].map(coefficients) as [number[], number[], number[], number[]];
const [reach, reachSquare, shift] = [
  normalQuantile.reach.value,
  normalQuantile.square.value,
  normalQuantile.shift.value,
];

/** c0 + c1 x + c2 x² ...; a plain loop, since a study asks millions of times. */
function polynomial(of: readonly number[], x: number): number {
  let sum = 0;
  for (let i = of.length - 1; i >= 0; i--) sum = sum * x + (of[i] as number);
  return sum;
}
/** 1 + d1 x + d2 x² ... */
const below = (of: readonly number[], x: number): number => polynomial(of, x) * x + 1;

/**
 * The standard normal value that a share of all cases lies below, for shares from e^-25 to 1 − e^-25 (Wichura's
 * algorithm with the coefficients of the table; 16 digits).
 */
export function normalAt(share: number): number {
  const q = share - 0.5;
  if (Math.abs(q) <= reach) {
    const r = reachSquare - q * q;
    return (q * polynomial(a, r)) / below(b, r);
  }
  const r = Math.sqrt(-Math.log(Math.max(leastShare, Math.min(share, 1 - share)))) - shift;
  const size = polynomial(c, r) / below(d, r);
  return q < 0 ? -size : size;
}

/**
 * The share of all cases below a standard normal value: 1/2 + φ(x)(x + x³/3 + x⁵/(3·5) + ...), the series that comes
 * from integrating φ by parts. All terms have one sign, so nothing cancels; beyond 8 the share is 0 or 1 to 15 digits.
 */
function seriesShare(x: number): number {
  let term = x;
  let sum = x;
  for (let i = 3; Math.abs(term) > 1e-17 * Math.abs(sum); i += 2) {
    term *= (x * x) / i;
    sum += term;
  }
  return 0.5 + sum * density(x);
}

const density = (x: number): number => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);

const reachOfShares = 8;
const perUnit = 16;
const nodes = Array.from({ length: 2 * reachOfShares * perUnit + 1 }, (_, i) => i / perUnit - reachOfShares);
const shareAt = Float64Array.from(nodes, seriesShare);
const densityAt = Float64Array.from(nodes, density);
const terms = 9;

/**
 * The same share, for millions of values: Taylor's series about the nearest of 257 places, where the share is known.
 * The derivatives of φ follow from φ' = −xφ: φ⁽ⁿ⁺¹⁾ = −xφ⁽ⁿ⁾ − nφ⁽ⁿ⁻¹⁾. No value is farther than 1/32 from a place, so
 * the first term left out is below 1e-17.
 */
export function normalShare(x: number): number {
  if (x > reachOfShares) return 1;
  if (x < -reachOfShares) return 0;
  const at = Math.round((x + reachOfShares) * perUnit);
  const node = at / perUnit - reachOfShares;
  const step = x - node;
  let [before, slope] = [0, densityAt[at] as number];
  let power = step;
  let sum = shareAt[at] as number;
  for (let n = 1; n <= terms; n++) {
    sum += slope * power;
    const next = -node * slope - (n - 1) * before;
    before = slope;
    slope = next;
    power *= step / (n + 1);
  }
  return sum;
}
