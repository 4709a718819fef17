import type { Shape } from "../../src/study/spread/shape";

/** A measured value, good to two percent. */
export function near(value: number): Shape {
  const off = 0.02 * Math.abs(value);
  return { kind: "three points", low: value - off, likely: value, high: value + off };
}
