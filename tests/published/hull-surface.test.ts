import { describe, expect, it } from "vitest";
import { hullSurface } from "../../src/formula/surface/hull-surface";
import { cell, rowsOf } from "./values";

const stations = [0, 130, 210, 340, 400, 555];
const heights = [-300, -220, -90, 0, 60, 170, 240];
const offsets = [
  [243.5, 238.3, 225.1, 185.8, 161.8, 95.7],
  [246.9, 234.3, 215.4, 168.6, 143.0, 79.4],
  [292.5, 265.4, 238.0, 183.5, 157.9, 104.8],
  [340.0, 302.9, 271.2, 215.4, 191.8, 149.3],
  [370.1, 326.9, 293.3, 238.6, 217.2, 182.6],
  [404.2, 352.5, 317.9, 269.1, 252.8, 232.9],
  [404.1, 349.3, 315.8, 272.9, 260.3, 248.9],
].flat();

describe("a smooth surface through uneven offsets (scipy, RectBivariateSpline, cubic)", () => {
  const at = hullSurface({ stations, heights, offsets }, "smooth", { aft: 0, fore: 555, low: -300, high: 240 });

  it.each(rowsOf("spline-surface.csv").map((row) => [cell(row, "x"), cell(row, "z"), row] as const))(
    "at %d, %d: value and both slopes",
    (x, z, row) => {
      const { breadth, along, up } = at(x, z);
      expect(Math.abs(breadth - cell(row, "value"))).toBeLessThan(1e-9);
      expect(Math.abs(along - cell(row, "along"))).toBeLessThan(1e-11);
      expect(Math.abs(up - cell(row, "up"))).toBeLessThan(1e-11);
    },
  );
});
