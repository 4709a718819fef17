import { Refusal } from "../../notebook/refusal";
import { say } from "../../words/say";
import { normalAt } from "./normal";

/** How an input may turn out. */
export type Shape =
  /** Straight up from the low end to the likely value, straight down to the high end. */
  | { readonly kind: "three points"; readonly low: number; readonly likely: number; readonly high: number }
  /** Every value from low to high equally likely. */
  | { readonly kind: "even"; readonly low: number; readonly high: number }
  /** The normal distribution about the likely value. */
  | { readonly kind: "normal"; readonly likely: number; readonly spread: number };

/** @throws Refusal for limits that stand the wrong way round or a spread below 0. */
export function checkShape(name: string, shape: Shape): void {
  const numbers = Object.values(shape).filter((value): value is number => typeof value === "number");
  if (!numbers.every(Number.isFinite)) throw new Refusal(say`${name}: low, likely and high are plain numbers.`);
  if (shape.kind === "normal") {
    if (shape.spread < 0) throw new Refusal(say`${name}: the spread is ${shape.spread}; it must be 0 or more.`);
    return;
  }
  const likely = shape.kind === "even" ? shape.low : shape.likely;
  if (!(shape.low <= likely && likely <= shape.high)) {
    const got = shape.kind === "even" ? `${shape.low}, ${shape.high}` : `${shape.low}, ${shape.likely}, ${shape.high}`;
    throw new Refusal(say`${name}: got ${got}; low, likely and high must rise.`);
  }
}

/** The value that a share of all cases lies below. */
export function valueAt(shape: Shape, share: number): number {
  switch (shape.kind) {
    case "even":
      return shape.low + share * (shape.high - shape.low);
    case "normal":
      return shape.likely + shape.spread * normalAt(share);
    case "three points": {
      const { low, likely, high } = shape;
      const whole = high - low;
      if (whole === 0) return likely;
      const left = (likely - low) / whole;
      return share < left
        ? low + Math.sqrt(share * whole * (likely - low))
        : high - Math.sqrt((1 - share) * whole * (high - likely));
    }
  }
}
