import type { UnitText } from "../../units/names";
import type { Act, Scope } from "../scope";

/**
 * A weighted mean of `term` over a closed curve, read at evenly spaced points.
 *
 * For a smooth periodic integrand even spacing converges faster than any power of the number of points.
 */
export interface Mean {
  readonly kind: "mean";
  readonly symbol: string;
  /** The angle in radians: `points` values in the middle of equal parts of `from` .. `to`. */
  readonly angle: string;
  readonly from: string;
  readonly to: string;
  readonly points: number;
  readonly term: string;
  readonly weight?: string;
  readonly unit: UnitText;
  readonly why: string;
}

export function mean(step: Mean, scope: Scope): Act {
  const from = scope.run(step.from);
  const to = scope.run(step.to);
  const angle = scope.add(step.angle);
  const term = scope.run(step.term);
  const weight = scope.run(step.weight ?? "1");
  const own = scope.add(step.symbol);
  return (slots) => {
    const start = from(slots);
    const part = (to(slots) - start) / step.points;
    let total = 0;
    let weights = 0;
    for (let i = 0; i < step.points; i++) {
      slots[angle] = start + (i + 0.5) * part;
      const w = weight(slots);
      total += w * term(slots);
      weights += w;
    }
    slots[own] = total / weights;
  };
}
