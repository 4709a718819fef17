import { say } from "../../../words/say";
import { asNumber, finite, help, type MathName, math, type Node, plain, power } from "../node";
import { type Lowering, NotTaken, spread } from "../part";
import { kinds } from "../plain";

/** Lowers a function of so many numbers; left out ones take their defaults. */
const ofNumbers =
  (least: number, defaults: readonly number[], make: (args: readonly Node[]) => Node): Lowering =>
  ({ name, args }, { part }) => {
    if (args.length < least || args.length > least + defaults.length) {
      throw new NotTaken(say`${name} has ${args.length} arguments`);
    }
    const filled = [...args.map(part), ...defaults.slice(args.length - least).map(plain)];
    return spread(filled, (nodes) => make(nodes.map(asNumber)));
  };

const one = (name: MathName): Lowering => ofNumbers(1, [], ([a = plain(0)]) => math(name, a));

const times = (factor: number): Lowering =>
  ofNumbers(1, [], ([a = plain(0)]) => ({ op: "sign", sign: "*", left: a, right: plain(factor), kinds: kinds.number }));

const helped = (name: string, least: number, defaults: readonly number[] = []): Lowering =>
  ofNumbers(least, defaults, (args) => help(name, args, kinds.number));

const quotient = (left: Node, right: Node): Node => ({
  op: "sign",
  sign: "/",
  left,
  right: finite(right),
  kinds: kinds.number,
});

/** The engine's own π has fourteen digits behind the point. */
const enginePi = Number(Math.PI.toFixed(14));

export const numberFunctions: Readonly<Record<string, Lowering>> = {
  ABS: one("abs"),
  ACOS: one("acos"),
  ASIN: one("asin"),
  ATAN: one("atan"),
  ATAN2: helped("angle", 2),
  CEILING: helped("ceiling", 2),
  COS: one("cos"),
  COSH: one("cosh"),
  DEGREES: times(180 / Math.PI),
  EXP: one("exp"),
  FLOOR: helped("floor", 2),
  INT: helped("whole", 1),
  LN: one("log"),
  LOG: ofNumbers(1, [10], ([a = plain(0), base = plain(10)]) => quotient(math("log", a), math("log", base))),
  LOG10: one("log10"),
  MOD: helped("remainder", 2),
  PI: ofNumbers(0, [], () => plain(enginePi)),
  POWER: ofNumbers(2, [], ([a = plain(0), b = plain(0)]) => power(a, b)),
  RADIANS: times(Math.PI / 180),
  ROUND: helped("round", 1, [0]),
  ROUNDDOWN: helped("roundDown", 1, [0]),
  ROUNDUP: helped("roundUp", 1, [0]),
  SIGN: helped("sign", 1),
  SIN: one("sin"),
  SINH: one("sinh"),
  SQRT: one("sqrt"),
  TAN: one("tan"),
  TANH: one("tanh"),
  TRUNC: helped("roundDown", 1, [0]),
};
