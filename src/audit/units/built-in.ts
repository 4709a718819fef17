import type { Parsed } from "../../engine/parsed";
import { plain, raised, type Scale, scaleOf } from "../../units/scale";
import { choice, everySecond, xlookup } from "./choosing";
import { plainNumber, product, quantity, shared, silent } from "./measure";
import { together } from "./together";
import type { Rule } from "./visit";

const radian = plain;
const degree = scaleOf("deg") as Scale;

/** The first argument's own unit; others are only walked. */
const asFirst: Rule = (visit, { args }) => {
  const [first = silent] = args.map((part) => visit.measure(part));
  return first;
};

/** A step or a divisor that is typed counts in the unit of what is rounded or divided. */
const stepped: Rule = (visit, { name, args }) => {
  const [value, step] = args;
  const measure = value ? visit.measure(value) : silent;
  if (!value || !step || step.kind === "number") return measure;
  return visit.judge.alike(name, measure, visit.measure(step), [visit.words(value), visit.words(step)]);
};

const alike: Rule = (visit, { name, args }) => together(visit, name, args);

/** Counts, places and tests: the arguments are walked for their own mistakes, the result is a plain number. */
const counted: Rule = (visit, { args }) => {
  for (const part of args) if (part.kind !== "range") visit.measure(part);
  return plainNumber;
};

const quiet: Rule = (visit, { args }) => {
  for (const part of args) if (part.kind !== "range") visit.measure(part);
  return silent;
};

/** Functions of a plain number. */
const ofPlain =
  (result: Scale): Rule =>
  (visit, { name, args }) => {
    for (const part of args) visit.judge.wanted(name, visit.words(part), visit.measure(part), plain);
    return quantity(result);
  };

const ofAngle: Rule = (visit, { name, args }) => {
  const [part] = args;
  const measure = part ? visit.measure(part) : silent;
  if (part && measure.kind === "quantity" && shared(measure, quantity(degree)) && !shared(measure, quantity(radian))) {
    const inner = visit.words(part);
    visit.judge.say("error", `${name}: ${inner} is in deg, ${name} takes radians; write ${name}(RADIANS(${inner}))`);
  } else if (part) {
    visit.judge.wanted(name, visit.words(part), measure, radian);
  }
  return plainNumber;
};

const angle =
  (from: Scale, to: Scale): Rule =>
  (visit, { name, args }) => {
    const [part] = args;
    if (part) visit.judge.wanted(name, visit.words(part), visit.measure(part), from);
    return quantity(to);
  };

const root: Rule = (visit, { args }) => {
  const [part] = args;
  const measure = part ? visit.measure(part) : silent;
  return measure.kind === "quantity" ? quantity(...measure.scales.map((scale) => raised(scale, 0.5))) : silent;
};

const power: Rule = (visit, { args }) => {
  const [a, b] = args;
  return a && b ? visit.power(visit.measure(a), visit.measure(b), [visit.words(a), visit.words(b)]) : silent;
};

const sumProduct: Rule = (visit, { args }) =>
  args
    .map((part) => visit.measure(part))
    .reduce((all, one) => (all.kind === "quantity" && one.kind === "quantity" ? product(all, one, "*") : silent));

const conditionalSum =
  (values: (args: readonly Parsed[]) => Parsed | undefined): Rule =>
  (visit, { name, args }) => {
    const part = values(args);
    return part ? together(visit, name, [part]) : silent;
  };

const arcOf: Rule = (visit, { name, args }) => {
  together(visit, name, args);
  return quantity(radian);
};

const rules: Readonly<Record<string, Rule>> = {
  ...Object.fromEntries(
    "ABS ROUND ROUNDUP ROUNDDOWN INT TRUNC EVEN ODD INDEX N".split(" ").map((name) => [name, asFirst]),
  ),
  ...Object.fromEntries(
    "SUM MIN MAX AVERAGE MEDIAN MINA MAXA AVERAGEA STDEV.S STDEV.P STDEV".split(" ").map((name) => [name, alike]),
  ),
  ...Object.fromEntries(
    "COUNT COUNTA COUNTBLANK COUNTIF COUNTIFS ROWS COLUMNS ROW COLUMN MATCH XMATCH SIGN LEN RAND PI"
      .split(" ")
      .map((name) => [name, counted]),
  ),
  ...Object.fromEntries("EXP LN LOG LOG10 SINH COSH TANH".split(" ").map((name) => [name, ofPlain(plain)])),
  ...Object.fromEntries("ASIN ACOS ATAN".split(" ").map((name) => [name, ofPlain(radian)])),
  ...Object.fromEntries("SIN COS TAN COT".split(" ").map((name) => [name, ofAngle])),
  ...Object.fromEntries("MOD CEILING FLOOR CEILING.MATH FLOOR.MATH MROUND".split(" ").map((name) => [name, stepped])),
  RADIANS: angle(degree, radian),
  DEGREES: angle(radian, degree),
  ATAN2: arcOf,
  SQRT: root,
  POWER: power,
  IF: choice((args) => args.slice(1)),
  IFERROR: choice((args) => args),
  IFNA: choice((args) => args),
  IFS: choice(everySecond(1)),
  CHOOSE: choice((args) => args.slice(1)),
  SWITCH: choice((args) => args.filter((_, i) => i > 0 && (i % 2 === 0 || i === args.length - 1))),
  XLOOKUP: xlookup,
  SUMPRODUCT: sumProduct,
  SUMIF: conditionalSum((args) => args[2] ?? args[0]),
  AVERAGEIF: conditionalSum((args) => args[2] ?? args[0]),
  SUMIFS: conditionalSum((args) => args[0]),
  MINIFS: conditionalSum((args) => args[0]),
  MAXIFS: conditionalSum((args) => args[0]),
};

/** A call of one of the engine's own functions; those that are not known here end the chain without a word. */
export const builtIn: Rule = (visit, call) =>
  (Object.hasOwn(rules, call.name) ? rules[call.name] : quiet)?.(visit, call) ?? silent;
