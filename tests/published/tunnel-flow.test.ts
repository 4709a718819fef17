import { describe, expect, it } from "vitest";
import { tunnelFriction } from "../../src/functions/tunnel/friction";
import { tunnelGrid } from "../../src/functions/tunnel/grid";
import { tunnelGrill } from "../../src/functions/tunnel/grill";
import { tunnelInlet } from "../../src/functions/tunnel/inlet";
import { tunnelOblique } from "../../src/functions/tunnel/oblique";
import { tunnelSuction } from "../../src/functions/tunnel/suction";
import { callByName } from "../functions/second-calculation";
import { cell, rowsOf } from "./values";

// toBeCloseTo(value, n) allows half a unit of the n-th decimal: n is what the source prints.

describe("losses", () => {
  it.each(rowsOf("entry-loss.csv"))("TUNNEL.INLET at r/D $radius (Crane TP-410 2009, Munson fig. 8.24)", (row) => {
    const loss = callByName(tunnelInlet, { edgeRadius: 200 * cell(row, "radius"), diameter: 200 });
    expect(loss).toBeCloseTo(cell(row, "loss"), 9);
  });

  it.each([
    [90, 0.57],
    [70, 0.696],
    [60, 0.77],
    [45, 0.8821],
    [30, 0.9798],
  ])("TUNNEL.OBLIQUE at %d degrees (Idelchik 1966)", (angle, loss) => {
    expect(callByName(tunnelOblique, { angle })).toBeCloseTo(loss, 4);
  });

  it.each(rowsOf("friction-factor.csv"))(
    "TUNNEL.FRICTION at Reynolds number $reynolds, roughness $roughness (Colebrook 1939, solved to 7 decimals)",
    (row) => {
      // One diameter of tube; the speed and the viscosity are those that give the Reynolds number.
      const reynolds = cell(row, "reynolds");
      const viscosity = reynolds < 1e6 ? 1e-6 : 5e-7;
      const speed = (reynolds * viscosity) / 0.5;
      const given = { length: 500, diameter: 500, roughness: 500 * cell(row, "roughness") };
      // 4000 itself is the lower end: a hair above it, so that rounding of the speed does not fall below.
      const loss = callByName(tunnelFriction, { ...given, speed: speed * (1 + 1e-12), viscosity });
      expect(loss).toBeCloseTo(cell(row, "factor"), 7);
    },
  );

  it.each([
    [1e5, 0, 0.018],
    [1e6, 0, 0.0116],
    [1e6, 1e-4, 0.0134],
    [1e5, 0.01, 0.0385],
    [1e6, 0.05, 0.0716],
  ])("TUNNEL.FRICTION at Reynolds number %d, roughness %d is what a Moody chart reads", (reynolds, roughness, f) => {
    const given = { length: 500, diameter: 500, roughness: 500 * roughness, viscosity: 1e-6 };
    expect(callByName(tunnelFriction, { ...given, speed: (reynolds * 1e-6) / 0.5 })).toBeCloseTo(f, 4);
  });

  it.each(rowsOf("grid-loss.csv"))(
    "TUNNEL.GRID and TUNNEL.GRILL for $bar mm bars, $gap mm apart (Kirschmer 1926, factors from memory; Blevins)",
    (row) => {
      for (const section of ["square", "rounded front", "round", "rounded both ends", "streamlined"]) {
        const loss = callByName(tunnelGrid, { bar: cell(row, "bar"), gap: cell(row, "gap"), section });
        expect(loss, section).toBeCloseTo(cell(row, section), 4);
      }
      const open = cell(row, "gap") / (cell(row, "gap") + cell(row, "bar"));
      expect(open).toBeCloseTo(cell(row, "open"), 4);
      expect(callByName(tunnelGrill, { open })).toBeCloseTo(cell(row, "grill"), 4);
    },
  );

  it("TUNNEL.GRILL at open shares 0.9, 0.8 and 0.5 (Blevins, 3 decimals)", () => {
    expect(callByName(tunnelGrill, { open: 0.9 })).toBeCloseTo(0.296, 3);
    expect(callByName(tunnelGrill, { open: 0.8 })).toBeCloseTo(0.719, 3);
    expect(callByName(tunnelGrill, { open: 0.5 })).toBeCloseTo(4, 3);
  });

  it("TUNNEL.SUCTION of 6 and 4.78 m/s at inlet loss 0.2 (own arithmetic: 22.1 and 14.1 kPa, 2.20 and 1.40 m)", () => {
    expect(callByName(tunnelSuction, { jet: 6, inlet: 0.2 })).toBeCloseTo(2.2, 2);
    expect(callByName(tunnelSuction, { jet: 4.78, inlet: 0.2 })).toBeCloseTo(1.4, 2);
  });
});
