/**
 * A closed-form sailing yacht's hull, our own, for proofs: half-breadth in mm at `x` mm from the stem aft and `z` mm up
 * from the waterline. L 10.8, B 3.4, T 0.75 m; greatest beam at 0.55 L; 0 below the keel.
 */
export function yachtHull(x: number, z: number): number {
  const middle = 0.55 * 10_800;
  const u = x / middle;
  const w = (x - middle) / (10_800 - middle);
  const ahead = x <= middle;
  const b = 1700 * (ahead ? 1 - (1 - u) ** 1.7 : 1 - 0.35 * w * w);
  const depth = 750 * (ahead ? 1 - (1 - u) ** 3 : 1 - 0.8 * w * w);
  const a = ahead ? 0.3 - 0.25 * u : 0.05;
  const q = z / depth;
  if (x <= 0 || q <= -1) return 0;
  return q >= 0 ? b * (1 + a * q) : b * (1 + a * q - (1 - a) * (-q) ** 2.5);
}
