import {
  type Arithmetic,
  type Comparison,
  type Expression,
  type MathName,
  mathArity,
} from "../../src/formula/expression";

/** Uniform numbers from 0 to 1 that are the same on every machine (xorshift with a multiplier, 32 bits). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return (Math.imul(state, 0x9e3779b1) >>> 0) / 2 ** 32;
  };
}

export const pick = <T>(random: () => number, from: readonly T[]): T => from[Math.floor(random() * from.length)] as T;

const literals = [0, 1, 2, 3, 0.5, 1.5, 10, 60, 1000, 3.7, 0.1, 1e-7, 1.1892e-6, 1e21, 5e-324, 12345.678901234567];
const operators: readonly Arithmetic[] = ["+", "-", "*", "/", "^"];
const comparisons: readonly Comparison[] = ["<", "<=", ">", ">=", "==", "!="];
const functions = Object.keys(mathArity) as MathName[];

/** A random formula of numbers over the names, at most so deep; powers, choices and every function occur. */
export function randomExpression(random: () => number, names: readonly string[], depth: number): Expression {
  const below = () => randomExpression(random, names, depth - 1);
  const leaf = (): Expression =>
    random() < 0.7
      ? { kind: "name", name: pick(random, names) }
      : random() < 0.1
        ? { kind: "name", name: "pi" }
        : { kind: "number", value: pick(random, literals) };
  if (depth === 0 || random() < 0.1) return leaf();
  const condition = (deep: number): Expression =>
    deep > 0 && random() < 0.4
      ? {
          kind: "logic",
          op: pick(random, ["and", "or"] as const),
          left: condition(deep - 1),
          right: condition(deep - 1),
        }
      : { kind: "compare", op: pick(random, comparisons), left: below(), right: below() };
  const kind = random();
  if (kind < 0.6) return { kind: "binary", op: pick(random, operators), left: below(), right: below() };
  if (kind < 0.72) return { kind: "minus", of: below() };
  if (kind < 0.9) {
    const name = pick(random, functions);
    return { kind: "call", name, args: Array.from({ length: mathArity[name] }, below) };
  }
  return { kind: "choice", test: condition(2), then: below(), otherwise: below() };
}
