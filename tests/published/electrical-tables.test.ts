import { describe, expect, it } from "vitest";
import { awgArea } from "../../src/functions/conductor/awg-area";
import { lugPull } from "../../src/functions/supply/lug-pull";
import { boatGauges } from "../../src/tables/boat-gauges";
import { crimpPull } from "../../src/tables/crimp-pull";
import { engineSpaceFactors } from "../../src/tables/engine-space";
import { shortCircuitFactors } from "../../src/tables/short-circuit-factors";
import { callByName } from "../functions/second-calculation";
import { cell, rowsOf } from "./values";

describe("tables for reading", () => {
  /** Pounds-force as UL 486A prints them; 3/0 and 4/0 from memory. */
  const pounds = { 18: 20, 16: 30, 14: 50, 12: 70, 10: 80, 8: 90, 6: 100, 4: 140, 2: 180 };
  const larger = { "1/0": 250, "2/0": 300, "3/0": 350, "4/0": 450 };

  it.each(Object.entries({ ...pounds, ...larger }))(
    "pull-out of %s AWG is %d lbf in newtons (UL 486A)",
    (gauge, lbf) => {
      const row = crimpPull.rows.find(([key]) => key === gauge);
      expect(row?.[1]).toBeCloseTo(lbf * 4.4482216, 1);
    },
  );

  it.each([
    [35, "2"],
    [70, "2/0"],
  ])("IEC 61238-1 asks of %d mm2 about three times what UL 486A asks of %s AWG", (area, gauge) => {
    const row = crimpPull.rows.find(([key]) => key === gauge);
    const times = callByName(lugPull, { area }) / Number(row?.[1]);
    expect(times).toBeGreaterThan(2.55);
    expect(times).toBeLessThan(3.15);
  });

  it.each(rowsOf("wire-gauges.csv"))("least area of $awg AWG is $least circular mils (SAE, two reprints)", (row) => {
    const least = boatGauges.rows.find(([key]) => key === String(row.awg))?.[2];
    if (typeof row.least !== "number") {
      expect(least).toBeNull();
      return;
    }
    expect(least).toBeCloseTo(row.least * 5.067075e-4, 3);
    const missing = 1 - Number(least) / callByName(awgArea, { gauge: String(row.awg) });
    expect(missing).toBeGreaterThan(0.025);
    expect(missing).toBeLessThan(0.115);
  });

  it("short-circuit factors are those of IEC 60364-5-54 and BS 7671", () => {
    const printed = rowsOf("short-circuit-factors.csv");
    expect(shortCircuitFactors.rows.map((row) => row.slice(1))).toEqual(
      printed.map((row) => [cell(row, "before"), cell(row, "after"), cell(row, "printed")]),
    );
  });

  it("engine-space factors follow the square root of the temperature room, but for 200 °C (33 CFR 183.425 note 1)", () => {
    for (const [insulation, factor] of engineSpaceFactors.rows) {
      const rule = Math.sqrt((Number(insulation) - 50) / (Number(insulation) - 30));
      // Printed to two decimals; 80 and 105 °C stand one unit of the last above and below the rule.
      if (insulation === 200) expect(Number(factor)).toBeGreaterThan(rule);
      else expect(Math.abs(Number(factor) - rule)).toBeLessThan(0.01);
    }
  });
});
