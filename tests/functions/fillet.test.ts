import { describe, expect, it } from "vitest";
import { filletArea } from "../../src/functions/joint/fillet-area";
import { filletVolume } from "../../src/functions/joint/fillet-volume";
import { agrees, callByName } from "./second-calculation";

/** Section of a fillet from its corner points: the kite corner, touch, centre, touch less the sector at the centre. */
function section(radius: number, angle: number): number {
  const reach = radius / Math.sin(angle / 2);
  const tangent = reach * Math.cos(angle / 2);
  const centre = [reach * Math.cos(angle / 2), reach * Math.sin(angle / 2)] as const;
  const touch = [tangent * Math.cos(angle), tangent * Math.sin(angle)] as const;
  const kite = Math.abs(tangent * centre[1] + centre[0] * touch[1] - touch[0] * centre[1]) / 2;
  const [ax, ay] = [tangent - centre[0], -centre[1]];
  const [bx, by] = [touch[0] - centre[0], touch[1] - centre[1]];
  const turn = Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by));
  return kite - (radius ** 2 * turn) / 2;
}

type Vector = readonly [number, number, number];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const size = (a: Vector): number => Math.sqrt(dot(a, a));

/**
 * Filler round a tube of radius 1 through a slanting plane, over r² and edge, by Simpson's rule in space: at each point
 * of the edge the inside angle is taken between the two directions that lie in tube and skin, square to the edge.
 */
function meanSection(tilt: number): number {
  const steps = 1200;
  const normal: Vector = [-Math.sin(tilt), 0, Math.cos(tilt)];
  let filler = 0;
  let edge = 0;
  for (let i = 0; i <= steps; i++) {
    const t = (2 * Math.PI * i) / steps;
    const along: Vector = [-Math.sin(t), Math.cos(t), -Math.sin(t) * Math.tan(tilt)];
    const outward: Vector = [Math.cos(t), Math.sin(t), 0];
    const onSkin = cross(along, normal);
    const onTube = cross(outward, along);
    const angle = Math.acos(dot(onSkin, onTube) / size(onSkin) / size(onTube));
    const weight = (i === 0 || i === steps ? 1 : i % 2 ? 4 : 2) * size(along);
    filler += weight * section(1, angle);
    edge += weight;
  }
  return filler / edge;
}

describe("FILLET.AREA", () => {
  it("agrees with a kite less a sector, built from points", () => {
    agrees(filletArea, ({ radius = 0, angle = 90 }) => section(radius, (angle * Math.PI) / 180), {
      // Near a straight angle both parts nearly cancel.
      scale: ({ radius = 0 }) => radius ** 2 * 1e-3,
    });
  });
});

describe("FILLET.VOLUME", () => {
  it("agrees with Simpson's rule along the edge in space", () => {
    agrees(
      filletVolume,
      ({ radius = 0, edge = 0, tilt = 0 }) => (meanSection((tilt * Math.PI) / 180) * radius ** 2 * edge) / 1000,
      { relative: 1e-9 },
    );
  });

  it("is the square section times the edge where the tube meets the skin squarely", () => {
    const given = { radius: 12, edge: 610 };
    expect(callByName(filletVolume, { ...given, tilt: 0 })).toBeCloseTo(
      (callByName(filletArea, { radius: 12, angle: 90 }) * 610) / 1000,
      9,
    );
  });
});
