import { Refusal } from "../notebook/refusal";
import { say } from "../words/say";
import { checkShape, type Shape } from "./spread/shape";
import type { VariedInput } from "./spread/spread";
import type { StudyInput, Subject } from "./subject";

const number = String.raw`[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?`;
const patterns = {
  points: new RegExp(`^(${number}),(${number})(?:,(${number}))?$`),
  about: new RegExp(`^(?:(${number}))?(?:±|\\+-)(${number})(%)?$`),
};

/** Said wherever a spread is asked for in words that cannot be read. */
export const varyAdvice = say`write low,likely,high or low,high or ±5% or likely±spread`;

/**
 * How an input may turn out, from text: `10,12,20` low, likely, high · `10,20` every value alike · `±5%` or `±2` three
 * points about the present value · `12±0.5` normal with that spread.
 *
 * @throws Refusal for anything else, or for limits that do not rise.
 */
export function readShape(input: StudyInput, text: string): Shape {
  const shape = shapeOf(input, text.replace(/\s/g, ""));
  if (!shape) throw new Refusal(say`${input.name}: "${text}" is no spread; ${varyAdvice}.`);
  checkShape(input.name, shape);
  return shape;
}

function shapeOf(input: StudyInput, text: string): Shape | undefined {
  const points = patterns.points.exec(text);
  if (points) {
    const [low, second, third] = points.slice(1).map(Number);
    if (low === undefined || second === undefined) return undefined;
    return points[3] === undefined
      ? { kind: "even", low, high: second }
      : { kind: "three points", low, likely: second, high: third ?? second };
  }
  const about = patterns.about.exec(text);
  if (!about) return undefined;
  const [, middle, size, percent] = about;
  const by = Number(size);
  if (middle !== undefined) {
    const likely = Number(middle);
    return { kind: "normal", likely, spread: percent ? (Math.abs(likely) * by) / 100 : by };
  }
  if (typeof input.value !== "number") throw new Refusal(say`${input.name} holds no number that could spread.`);
  const reach = percent ? (Math.abs(input.value) * by) / 100 : by;
  return { kind: "three points", low: input.value - reach, likely: input.value, high: input.value + reach };
}

/** Inputs that a notebook gives a likely value besides its limits: they spread of themselves. */
export const ownSpread = (subject: Subject): VariedInput[] =>
  subject.inputs.flatMap(({ low, likely, high }, input) =>
    low === undefined || likely === undefined || high === undefined
      ? []
      : [{ input, shape: { kind: "three points", low, likely, high } }],
  );
