import { describe, expect, it } from "vitest";
import { conductorCarry } from "../../src/functions/conductor/carry";
import { conductorCarryShip } from "../../src/functions/conductor/carry-ship";
import { fuseNext } from "../../src/functions/supply/fuse-next";
import { callByName } from "../functions/second-calculation";
import { cell, rowsOf } from "./values";

// toBeCloseTo(value, n) allows half a unit of the n-th decimal: n is what the source prints.

const gaugeOf = (row: Readonly<Record<string, unknown>>): string => String(row.awg);

describe("33 CFR 183.425", () => {
  it.each(rowsOf("boat-cable-current.csv"))("CONDUCTOR.CARRY of $awg, all seven insulations (table 5)", (row) => {
    for (const insulation of [60, 75, 80, 90, 105, 125, 200]) {
      const given = { gauge: gaugeOf(row), insulation };
      expect(callByName(conductorCarry, given)).toBe(cell(row, String(insulation)));
    }
  });

  it.each([
    ["1", 165],
    ["1/0", 195],
    ["2/0", 225],
    ["3/0", 260],
    ["4/0", 300],
  ])("CONDUCTOR.CARRY of %s at 60 °C is %d A (ASTM F1883 table 1 prints the same)", (gauge, amps) => {
    expect(callByName(conductorCarry, { gauge, insulation: 60 })).toBe(amps);
  });

  it.each([
    ["1/0", 242],
    ["4/0", 378],
  ])("CONDUCTOR.CARRY of %s in an engine space is %d A (reprints of the corrected column)", (gauge, amps) => {
    expect(callByName(conductorCarry, { gauge, engineSpace: true })).toBeCloseTo(amps, 0);
  });

  it("CONDUCTOR.CARRY of 2/0 in an engine space is 280.5 A (UL 1426 cable table)", () => {
    expect(callByName(conductorCarry, { gauge: "2/0", engineSpace: true })).toBeCloseTo(280.5, 1);
  });

  it.each([
    [60, 0.58],
    [75, 0.75],
    [90, 0.82],
  ])("the remembered engine-space factor of %d °C is that of the NEC for 46 to 50 °C", (insulation, factor) => {
    const given = { gauge: "1/0", insulation };
    const share = callByName(conductorCarry, { ...given, engineSpace: true }) / callByName(conductorCarry, given);
    expect(share).toBeCloseTo(factor, 9);
  });

  it.each([
    ["2", 300],
    ["1/0", 400],
    ["2/0", 450],
    ["4/0", 600],
  ])("150 %% of %s at 105 °C: the largest usual fuse is %d A (33 CFR 183.455, NEC 240.6)", (gauge, fuse) => {
    const limit = 1.5 * callByName(conductorCarry, { gauge });
    expect(callByName(fuseNext, { current: fuse })).toBe(fuse);
    expect(fuse).toBeLessThanOrEqual(limit);
    // 601 A, which the clause adds to the usual steps, is passed over.
    expect(callByName(fuseNext, { current: fuse === 600 ? 601.1 : fuse + 0.1 })).toBeGreaterThan(limit);
  });

  it("a motor of 250 A on 1/0 leaves 250 to 400 A by the 150 % rule, 250 A by the 100 % rule", () => {
    const carry = callByName(conductorCarry, { gauge: "1/0" });
    const fuse = callByName(fuseNext, { current: 250 });
    expect(fuse).toBe(250);
    expect(callByName(fuseNext, { current: fuse + 1 })).toBe(300);
    expect(carry).toBeLessThan(300);
    expect(1.5 * carry).toBeCloseTo(427.5, 9);
  });
});

describe("ABS Rules for Steel Vessels 4-8-3 table 6", () => {
  it.each(rowsOf("ship-cable-current.csv"))("CONDUCTOR.CARRYSHIP of $size mm2 at 45 and at 30 °C", (row) => {
    for (const kind of [60, 75, 85, 95]) {
      const given = { area: cell(row, "size"), class: kind };
      expect(callByName(conductorCarryShip, given)).toBe(cell(row, String(kind)));
      const cooler = callByName(conductorCarryShip, { ...given, ambient: 30 });
      expect(cooler).toBeCloseTo(cell(row, `${kind}_at_30`), 0);
    }
  });

  it.each([
    [35, 1.12],
    [40, 1.06],
    [50, 0.94],
    [55, 0.87],
    [60, 0.79],
  ])("CONDUCTOR.CARRYSHIP of class 85 in %d °C is %d of that in 45 °C (IEC 60092-352)", (ambient, factor) => {
    const share = callByName(conductorCarryShip, { area: 70, ambient }) / callByName(conductorCarryShip, { area: 70 });
    expect(share).toBeCloseTo(factor, 2);
  });

  it("follows a constant times area to the power 0.625 within 1.5 %, but for 50 mm2 at 60 °C (own arithmetic)", () => {
    const off: string[] = [];
    for (const row of rowsOf("ship-cable-current.csv")) {
      for (const [kind, factor] of [
        [60, 9.5],
        [75, 13.5],
        [85, 16],
        [95, 18],
      ] as const) {
        const area = cell(row, "size");
        const share = callByName(conductorCarryShip, { area, class: kind }) / (factor * area ** 0.625);
        if (Math.abs(share - 1) > 0.015) off.push(`${area} mm2 at ${kind} °C`);
      }
    }
    expect(off).toEqual(["50 mm2 at 60 °C"]);
  });
});
