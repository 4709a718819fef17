import { isBare, isTime, larger, over, plain, raised, type Scale, sameScale, times } from "../../units/scale";

/**
 * What is known of the unit of a part of a formula.
 *
 * `silent`: text, a flag, or something that the audit does not follow. `bare`: a number that was typed.
 * `quantity`: one of several scales, as long as a typed number may be a conversion or a plain number.
 */
export type Measure =
  | { readonly kind: "silent" }
  | {
      readonly kind: "bare";
      readonly value: number;
      readonly conversions: readonly number[];
      readonly asPlain: boolean;
    }
  | { readonly kind: "quantity"; readonly scales: readonly Scale[] };

export type Bare = Extract<Measure, { kind: "bare" }>;
export type Quantity = Extract<Measure, { kind: "quantity" }>;

/** More readings than this are not followed. */
const mostScales = 16;

export const silent: Measure = { kind: "silent" };

export const quantity = (...scales: readonly Scale[]): Quantity => {
  const unique = scales.filter((scale, i) => scales.findIndex((other) => sameScale(scale, other)) === i);
  return { kind: "quantity", scales: unique.slice(0, mostScales) };
};

export const plainNumber: Quantity = quantity(plain);

/** Numbers that are typed to go from one unit of time to another; beside a time they do nothing else. */
const ofTime = new Set([60, 3600, 24, 1440, 86_400]);
const timeNumbers = new Set([...ofTime, 12]);

/**
 * A typed number. Beside a quantity, thousands and thousandths only ever carry one unit into another; tens,
 * hundreds, 60, 3600, 24 and 12 may do that or be plain numbers. Beside a time, 60 and the like are conversions.
 *
 * @param conversions whether typed numbers may carry one unit into another at all.
 */
export function bare(value: number, conversions: boolean): Bare {
  const power = Math.log10(Math.abs(value));
  const isTen = value > 0 && value !== 1 && Math.abs(power - Math.round(power)) < 1e-12;
  if (!conversions || !(isTen || timeNumbers.has(value)))
    return { kind: "bare", value, conversions: [], asPlain: true };
  return { kind: "bare", value, conversions: [value], asPlain: !isTen || Math.abs(Math.round(power)) < 3 };
}

/** What part of a typed number may be a conversion beside a scale; 1 is none of it. */
function parts(number: Bare, beside: Scale): readonly number[] {
  const surely = number.conversions.length > 0 && isTime(beside) && ofTime.has(number.value);
  return (number.asPlain && !surely) || isBare(beside) ? [1, ...number.conversions] : number.conversions;
}

/** Two typed numbers, multiplied or divided. */
export function bareProduct(a: Bare, b: Bare, op: "*" | "/"): Bare {
  const apply = (x: number, y: number) => (op === "*" ? x * y : x / y);
  const all = [1, ...a.conversions].flatMap((x) => [1, ...b.conversions].map((y) => apply(x, y)));
  return {
    kind: "bare",
    value: apply(a.value, b.value),
    conversions: [...new Set(all.filter((part) => part !== 1))],
    asPlain: a.asPlain && b.asPlain,
  };
}

/** A quantity multiplied or divided by a typed number. */
export const scaled = (of: Quantity, by: Bare, op: "*" | "/"): Quantity =>
  quantity(
    ...of.scales.flatMap((scale) => parts(by, scale).map((part) => larger(scale, op === "*" ? 1 / part : part))),
  );

export const inverse = (of: Quantity): Quantity => quantity(...of.scales.map((scale) => raised(scale, -1)));

export const product = (a: Quantity, b: Quantity, op: "*" | "/"): Quantity =>
  quantity(...a.scales.flatMap((x) => b.scales.map((y) => (op === "*" ? times(x, y) : over(x, y)))));

/** The readings that two quantities share. */
export const shared = (a: Quantity, b: Quantity): Quantity | undefined => {
  const both = a.scales.filter((x) => b.scales.some((y) => sameScale(x, y)));
  return both.length > 0 ? quantity(...both) : undefined;
};
