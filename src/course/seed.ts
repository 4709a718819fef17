import { uniformInt } from "pure-rand/distribution/uniformInt";
import { mersenne } from "pure-rand/generator/mersenne";

/**
 * A whole number from 0 to 2³² − 1 for a text: the hash FNV-1a of its UTF-8 bytes (Fowler, Noll, Vo; offset basis
 * 2166136261, prime 16777619).
 */
export function hashOf(text: string): number {
  let hash = 2166136261;
  for (const byte of new TextEncoder().encode(text)) hash = Math.imul(hash ^ byte, 16777619);
  return hash >>> 0;
}

/** A trainee as draws and files know it: `t07 ` and `T07` are the same. */
export const traineeId = (typed: string): string => typed.trim().normalize("NFC").toUpperCase();

/**
 * The draws of one trainee in one task: each call gives a whole number from 0 to below `count`, always the same
 * ones in the same order (Mersenne Twister MT19937, Matsumoto and Nishimura 1998, seeded from the texts alone).
 */
export function drawsFor(edition: string, task: string, trainee: string): (count: number) => number {
  const generator = mersenne(hashOf([edition, task, traineeId(trainee)].join("\n")));
  return (count) => uniformInt(generator, 0, count - 1);
}
