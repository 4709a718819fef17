import { describe, expect, it } from "vitest";
import { airDensityAt } from "../../src/functions/wind/air-density";
import { currentCoefficient } from "../../src/functions/wind/current-coefficient";
import { currentPush } from "../../src/functions/wind/current-push";
import { currentShallow } from "../../src/functions/wind/current-shallow";
import { waterDensity } from "../../src/functions/wind/water-density";
import { waterViscosity } from "../../src/functions/wind/water-viscosity";
import { callByName } from "../functions/second-calculation";
import { cell, rowsOf } from "./values";

// toBeCloseTo(value, n) allows half a unit of the n-th decimal: n is what the source prints.

describe("current", () => {
  it.each(rowsOf("cross-flow.csv"))("CURRENT.COEFFICIENT at B/2T $fullness (Hoerner, after Leite 1998)", (row) => {
    expect(callByName(currentCoefficient, { beam: 2 * cell(row, "fullness"), draught: 1 })).toBe(cell(row, "drag"));
  });

  it.each([
    { length: 11, draught: 0.8, coefficient: 0.61, knots: 1, push: 728 },
    { length: 8, draught: 0.5, coefficient: 0.62, knots: 0.5, push: 84 },
    { length: 20, draught: 1.4, coefficient: 0.62, knots: 1.5, push: 5298 },
  ])("CURRENT.PUSH of $knots kn on $length m (own arithmetic, whole newtons)", ({ knots, push, ...given }) => {
    expect(callByName(currentPush, { ...given, speed: (knots * 1852) / 3600 })).toBeCloseTo(push, 0);
  });

  it.each(rowsOf("shallow-current.csv"))(
    "CURRENT.SHALLOW and CURRENT.PUSH of 1.5 m/s in $depth m of water (UFC 4-159-03, 2005, table 4-6, 2 decimals)",
    (row) => {
      // Deep coefficient 0.851 and 0.630 MN of pressure on the profile are fitted to the five rows.
      const draught = cell(row, "share") * cell(row, "depth");
      const coefficient = callByName(currentShallow, { deep: 0.851, draught, depth: cell(row, "depth") });
      expect(coefficient).toBeCloseTo(cell(row, "coefficient"), 4);
      const length = 630000 / (0.5 * 1025 * 1.5 ** 2 * draught);
      const force = callByName(currentPush, { length, draught, speed: 1.5, coefficient });
      expect(force / 1e6).toBeCloseTo(cell(row, "force"), 2);
      // 0.630 is printed with three digits.
      const rounding = 5e-5 + 5e-4 * coefficient;
      expect(Math.abs(force / 1e6 - cell(row, "formula"))).toBeLessThan(rounding);
    },
  );
});

describe("water and air", () => {
  it.each(rowsOf("seawater-density.csv"))(
    "WATER.DENSITY at $temperature °C, salinity $salinity (UNESCO 36, 1981, and 44, 1983, 5 decimals)",
    (row) => {
      const given = { temperature: cell(row, "temperature"), salinity: cell(row, "salinity") };
      expect(callByName(waterDensity, given)).toBeCloseTo(cell(row, "density"), 5);
    },
  );

  it.each(rowsOf("seawater-density-90.csv"))(
    "WATER.DENSITY at $temperature °C of the scale of 1990 (4 decimals), TEOS-10 within 0.005 kg/m3",
    (row) => {
      const density = callByName(waterDensity, { temperature: 1.00024 * cell(row, "temperature") });
      expect(density).toBeCloseTo(cell(row, "eos80"), 4);
      expect(Math.abs(density - cell(row, "teos10"))).toBeLessThan(5e-3);
    },
  );

  it.each(rowsOf("sea-viscosity.csv"))("WATER.VISCOSITY at $temperature °C (ITTC 7.5-02-01-03, 2011)", (row) => {
    const viscosity = callByName(waterViscosity, { temperature: cell(row, "temperature") });
    expect(viscosity * 1e6).toBeCloseTo(cell(row, "viscosity"), 12);
  });

  it.each(rowsOf("air-density.csv"))("AIR.DENSITY at $temperature °C (ICAO Doc 7488, ISO 2533, 5 decimals)", (row) => {
    expect(callByName(airDensityAt, { temperature: cell(row, "temperature") })).toBeCloseTo(cell(row, "density"), 5);
  });
});
