import { describe, expect, it } from "vitest";
import { awgArea } from "../../src/functions/conductor/awg-area";
import { copperResistance } from "../../src/functions/conductor/copper-resistance";
import { conductorDrop } from "../../src/functions/conductor/drop";
import { conductorLeast } from "../../src/functions/conductor/least";
import { conductorResistanceOfRun } from "../../src/functions/conductor/resistance";
import { callByName } from "../functions/second-calculation";
import { cell, rowsOf } from "./values";

// toBeCloseTo(value, n) allows half a unit of the n-th decimal: n is what the source prints.

const gaugeOf = (row: Readonly<Record<string, unknown>>): string => String(row.awg);
const thousandFeet = 304.8;
const decimalsOf = (printed: number): number => String(printed).split(".")[1]?.length ?? 0;

describe("IEC 60228", () => {
  it.each(rowsOf("conductor-resistance.csv"))("CONDUCTOR.RESISTANCE of 1 km of $size mm2 (IEC 60228:2004)", (row) => {
    const given = { area: cell(row, "size"), run: 1000 };
    expect(callByName(conductorResistanceOfRun, given)).toBeCloseTo(cell(row, "class_5"), 9);
    expect(callByName(conductorResistanceOfRun, { ...given, class: 2 })).toBeCloseTo(cell(row, "class_2"), 9);
    const metre = callByName(conductorResistanceOfRun, { ...given, run: 1 });
    expect(metre * cell(row, "size")).toBeCloseTo(cell(row, "resistivity"), 5);
  });

  it.each([
    [20, 0.21],
    [60, 0.24],
    [85, 0.26],
  ])("CONDUCTOR.DROP of 95 mm2 at %d °C, 100 A in 10 m (Electric Cables Handbook, 3rd ed., table A9.2)", (t, volts) => {
    const given = { current: 100, run: 10, area: 95, temperature: t };
    expect(callByName(conductorDrop, given)).toBeCloseTo(volts, 2);
  });

  it.each([
    [20, 1.158, 50],
    [50, 1.295, 50],
  ])("CONDUCTOR.DROP and CONDUCTOR.LEAST, 300 A in 10 m at %d °C (own arithmetic)", (temperature, volts, area) => {
    expect(callByName(conductorDrop, { current: 300, run: 10, area, temperature })).toBeCloseTo(volts, 3);
    expect(callByName(conductorLeast, { current: 300, run: 10, drop: volts + 5e-4, temperature })).toBe(area);
  });
});

describe("copper", () => {
  it.each([
    [50, 1.118],
    [75, 1.216],
    [105, 1.334],
  ])("COPPER.RESISTANCE at %d °C against 20 °C (IEC 60028)", (temperature, factor) => {
    const given = { area: 50, run: 100 };
    const warmer = callByName(copperResistance, { ...given, temperature }) / callByName(copperResistance, given);
    expect(warmer).toBeCloseTo(factor, 3);
  });

  it("COPPER.RESISTANCE of 1000 circular mils, 1000 ft is 10.371 ohm (IEC 60028; wire tables print 10.37)", () => {
    const given = { area: 0.5067075, run: thousandFeet };
    expect(callByName(copperResistance, given)).toBeCloseTo(10.371, 3);
  });

  it.each(rowsOf("wire-gauges.csv"))("AWG.AREA of $awg (ASTM B258)", (row) => {
    const area = cell(row, "area");
    expect(callByName(awgArea, { gauge: gaugeOf(row) })).toBeCloseTo(area, decimalsOf(area));
  });

  it.each(rowsOf("wire-gauges-computed.csv"))(
    "AWG.AREA and COPPER.RESISTANCE of $awg: diameter, circular mils, ohms (ASTM B258, IEC 60028, own arithmetic)",
    (row) => {
      const area = callByName(awgArea, { gauge: gaugeOf(row) });
      const diameter = Math.sqrt((4 * area) / Math.PI);
      expect(diameter).toBeCloseTo(cell(row, "millimetres"), 4);
      expect(diameter / 25.4).toBeCloseTo(cell(row, "inches"), 5);
      expect((diameter / 0.0254) ** 2).toBeCloseTo(cell(row, "circular_mils"), 1);
      expect(callByName(copperResistance, { area, run: thousandFeet })).toBeCloseTo(cell(row, "thousand_feet"), 5);
      expect(callByName(copperResistance, { area, run: 1000 })).toBeCloseTo(cell(row, "kilometre"), 5);
    },
  );

  it.each([
    ["4/0", 107.22],
    ["2/0", 67.43],
    ["1/0", 53.475],
    ["2", 33.631],
    ["10", 5.261],
    ["18", 0.823],
  ])("AWG.AREA of %s is %d mm2 (ASTM B258, NBS Handbook 100)", (gauge, area) => {
    expect(callByName(awgArea, { gauge })).toBeCloseTo(area, decimalsOf(area));
  });

  it.each(rowsOf("wire-gauges.csv"))(
    "COPPER.RESISTANCE of 1000 ft of $awg is $ohms ohm (HyperPhysics, wire gauges; NEC chapter 9 table 8 at 75 °C)",
    (row) => {
      const given = { area: callByName(awgArea, { gauge: gaugeOf(row) }), run: thousandFeet };
      const ohms = cell(row, "ohms");
      expect(callByName(copperResistance, given)).toBeCloseTo(ohms, decimalsOf(ohms));
      if (row.hot === null || row.hot === undefined) return;
      const hot = cell(row, "hot");
      expect(callByName(copperResistance, { ...given, temperature: 75 })).toBeCloseTo(hot, decimalsOf(hot));
    },
  );

  it("a metric size is not the gauge next to it (ASTM F1883 table 1: 50 mm2 98 700, 1/0 105 600 circular mils)", () => {
    for (const [gauge, area] of [
      ["1/0", 50],
      ["4", 20],
    ] as const) {
      expect(callByName(awgArea, { gauge })).toBeGreaterThan(area);
    }
    for (const [gauge, area] of [
      ["4", 25],
      ["2", 35],
      ["2/0", 70],
      ["3/0", 95],
      ["4/0", 120],
    ] as const) {
      expect(callByName(awgArea, { gauge })).toBeLessThan(area);
    }
  });
});
