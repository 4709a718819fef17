import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { uniformInt } from "pure-rand/distribution/uniformInt";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { normalAt, normalShare } from "./normal";

/** How far inputs move together: 0 each by itself, 1 all in step. */
export type CommonCause = number;

/** Numbers that are the same for a seed on every machine (xoroshiro128+, Blackman and Vigna 2018). */
export interface Random {
  /** From 0 to below 1. */
  readonly share: () => number;
  /** From 0 to below `count`. */
  readonly below: (count: number) => number;
}

export function randomOf(seed: number): Random {
  const generator = xoroshiro128plus(seed);
  return { share: () => uniformFloat64(generator), below: (count) => uniformInt(generator, 0, count - 1) };
}

/** One share out of each of `count` equal parts of 0 to 1, in random order. */
function onePerPart(count: number, random: Random): Float64Array {
  const shares = new Float64Array(count);
  for (let i = 0; i < count; i++) shares[i] = (i + random.share()) / count;
  for (let i = count - 1; i > 0; i--) {
    const k = random.below(i + 1);
    const kept = shares[i] as number;
    shares[i] = shares[k] as number;
    shares[k] = kept;
  }
  return shares;
}

/** No share is 0 or 1, where a normal value would be infinite. */
const inside = (share: number): number => Math.min(Math.max(share, 1e-10), 1 - 1e-10);

/**
 * Shares for `count` trials of each input: the place of a trial among all cases of that input.
 *
 * Sampling: every input's cases are cut into as many equally likely parts as there are trials, each part is met once,
 * in random order (stratified in every input, "Latin hypercube"). Common cause: one more normal value Z is drawn a
 * trial in the same way; an input's own normal value e becomes √common·Z + √(1 − common)·e, so that any two inputs
 * have the correlation `common` between their normal values, whatever their shapes. An input that turns the other
 * way takes −Z.
 *
 * @param turns 1 with the common cause, −1 against it, 0 by itself; one for each input.
 */
export function shares(count: number, turns: readonly number[], common: CommonCause, random: Random): Float64Array[] {
  const own = turns.map(() => onePerPart(count, random));
  if (common === 0 || turns.every((turn) => turn === 0)) return own;
  const cause = onePerPart(count, random).map((share) => normalAt(inside(share)));
  const [together, apart] = [Math.sqrt(common), Math.sqrt(1 - common)];
  return own.map((part, i) => {
    const turn = turns[i] ?? 0;
    if (turn === 0) return part;
    for (let k = 0; k < count; k++) {
      const alone = apart === 0 ? 0 : apart * normalAt(inside(part[k] as number));
      part[k] = inside(normalShare(turn * together * (cause[k] as number) + alone));
    }
    return part;
  });
}
