import type { Numbers } from "./second-calculation";

// The skin as a plane through three points, for checks that do not use the functions' own formulas.

type Point = readonly [number, number, number];

const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Point, b: Point): Point => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

const tangent = (degrees: number): number => Math.sin((degrees * Math.PI) / 180) / Math.cos((degrees * Math.PI) / 180);

/** On the axis, 100 forward of it along the waterline, 100 above it up the section. */
function skin({ halfBreadth = 0, entrance = 0, flare = 0 }: Numbers): readonly [Point, Point] {
  const axis: Point = [0, halfBreadth, 0];
  const forward: Point = [100, halfBreadth - 100 * tangent(entrance), 0];
  const above: Point = [0, halfBreadth + 100 * tangent(flare), 100];
  return [axis, cross(minus(forward, axis), minus(above, axis))];
}

/** Where a line on the tube meets the skin: distance from the centreplane. */
export function cutLine(given: Numbers): number {
  const { diameter = 0, angle = 0 } = given;
  const [axis, normal] = skin(given);
  const around = (angle * Math.PI) / 180;
  const start: Point = [(diameter / 2) * Math.sin(around), 0, (diameter / 2) * Math.cos(around)];
  return dot(minus(axis, start), normal) / normal[1];
}

/** Cosine of the angle between the tube's axis and the square to the skin. */
export function across(given: Numbers): number {
  const [, normal] = skin(given);
  return Math.abs(normal[1]) / Math.hypot(...normal);
}

/** Tangent of that angle. */
export function steepness(given: Numbers): number {
  const [, normal] = skin(given);
  return Math.hypot(normal[0], normal[2]) / Math.abs(normal[1]);
}
