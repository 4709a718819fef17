/** A function of one input; NaN where there is no result. */
export type Curve = (x: number) => number;

/** Two neighbouring inputs between which something happens. */
export interface Bracket {
  readonly left: number;
  readonly right: number;
}

const mostHalvings = 200;

/**
 * Halves a bracket until nothing lies between its ends any more.
 *
 * @param isRight whether an input belongs to the right end's side.
 */
export function halve({ left, right }: Bracket, isRight: (x: number) => boolean): Bracket {
  let [a, b] = [left, right];
  for (let i = 0; i < mostHalvings; i++) {
    const middle = a + (b - a) / 2;
    if (middle <= a || middle >= b) break;
    if (isRight(middle)) b = middle;
    else a = middle;
  }
  return { left: a, right: b };
}

const golden = (Math.sqrt(5) - 1) / 2;

/** The input with the least value of a curve between two others, by the golden section; the curve bends once there. */
export function leastBetween(curve: Curve, { left, right }: Bracket): number {
  let [a, b] = [left, right];
  let [c, d] = [b - golden * (b - a), a + golden * (b - a)];
  let [atC, atD] = [curve(c), curve(d)];
  for (let i = 0; i < 80 && d > c; i++) {
    if (!(atC > atD)) {
      [b, d, atD] = [d, c, atC];
      c = b - golden * (b - a);
      atC = curve(c);
    } else {
      [a, c, atC] = [c, d, atD];
      d = a + golden * (b - a);
      atD = curve(d);
    }
  }
  return atC <= atD ? c : d;
}
