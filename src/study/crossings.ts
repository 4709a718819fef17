import { type Bracket, type Curve, leastBetween } from "./root";

/**
 * Brackets between neighbouring points where a curve crosses 0, and places where it is 0.
 *
 * @param values the curve at the points; NaN where it has no value.
 */
export function crossings(points: readonly number[], values: readonly number[], gap: Curve): (Bracket | number)[] {
  const found: (Bracket | number)[] = [];
  const at = (i: number) => values[i] ?? Number.NaN;
  const crosses = (a: number, b: number) => (a < 0 && b > 0) || (a > 0 && b < 0);
  points.forEach((x, i) => {
    if (at(i) === 0) found.push(x);
    const next = points[i + 1];
    if (next === undefined) return;
    if (crosses(at(i), at(i + 1))) found.push({ left: x, right: next });
    const [before, after] = [points[i - 1], next];
    // A valley or hill that comes near without crossing at the points may cross between them.
    if (before === undefined || !(Math.abs(at(i)) < Math.abs(at(i - 1)) && Math.abs(at(i)) < Math.abs(at(i + 1))))
      return;
    if (crosses(at(i - 1), at(i)) || crosses(at(i), at(i + 1)) || at(i) === 0) return;
    const towards = at(i) > 0 ? 1 : -1;
    const turn = leastBetween((one) => towards * gap(one), { left: before, right: after });
    const rest = gap(turn);
    if (crosses(rest, at(i))) found.push({ left: before, right: turn }, { left: turn, right: after });
    // Touching, as near as doubles tell.
    else if (Math.abs(rest) <= 1e-12 * Math.max(Math.abs(at(i - 1)), Math.abs(at(i + 1)))) found.push(turn);
  });
  return found;
}
