import fc from "fast-check";
import { evaluate } from "mathjs";
import { describe, expect, it } from "vitest";
import { callFunction } from "../../src/formula/call";
import { awgArea } from "../../src/functions/conductor/awg-area";
import { awgLeast } from "../../src/functions/conductor/awg-least";
import { copperResistance } from "../../src/functions/conductor/copper-resistance";
import { conductorDrop } from "../../src/functions/conductor/drop";
import { conductorLeast } from "../../src/functions/conductor/least";
import { conductorResistanceOfRun } from "../../src/functions/conductor/resistance";
import { cell, rowsOf } from "../published/values";
import { agrees, byUnits, callByName } from "./second-calculation";

/** IEC 60228 tables 2 and 3 as the check data prints them, not as the function's own table does. */
const sizes = rowsOf("conductor-resistance.csv").map((row) => ({
  size: cell(row, "size"),
  "2": cell(row, "class_2"),
  "5": cell(row, "class_5"),
}));

const part = fc.integer({ min: 0, max: 1_000_000 }).map((i) => i / 1_000_000);
const from = (min: number, max: number) => part.map((share) => min + share * (max - min));

const runs = fc.record({
  row: fc.constantFrom(...sizes),
  current: from(0, 2000),
  run: from(0.1, 200),
  temperature: from(-40, 150),
  parallel: fc.integer({ min: 1, max: 8 }),
  class: fc.constantFrom<2 | 5>(2, 5),
});

/** With the units library, so that a slip between km and m shows. */
const ohms = (perKm: number, run: number, temperature: number, parallel: number): number =>
  evaluate("(r * run * (1 + 0.00393 / K * warmer) / n)", {
    r: evaluate(`${perKm} ohm/km`),
    run: evaluate(`${run} m`),
    K: evaluate("1 K"),
    warmer: evaluate(`${temperature - 20} K`),
    n: parallel,
  }).toNumber("ohm");

const near = (ours: number, theirs: number): void =>
  expect(Math.abs(ours - theirs), `${ours}, expected ${theirs}`).toBeLessThanOrEqual(1e-9 * Math.abs(theirs));

describe("resistance and drop of a run", () => {
  it("CONDUCTOR.RESISTANCE agrees with IEC 60228 by the units library for 400 random runs", () => {
    fc.assert(
      fc.property(runs, ({ row, run, temperature, parallel, class: kind }) => {
        near(
          callByName(conductorResistanceOfRun, { area: row.size, run, temperature, parallel, class: kind }),
          ohms(row[kind], run, temperature, parallel),
        );
      }),
      { numRuns: 400, seed: 60228 },
    );
  });

  it("CONDUCTOR.DROP agrees with Ohm's law on IEC 60228 class 5 for 400 random runs", () => {
    fc.assert(
      fc.property(runs, ({ row, current, run, temperature, parallel }) => {
        near(
          callByName(conductorDrop, { current, run, area: row.size, temperature, parallel }),
          current * ohms(row["5"], run, temperature, parallel),
        );
      }),
      { numRuns: 400, seed: 5 },
    );
  });

  it("CONDUCTOR.LEAST is the first size whose drop is within the limit, for 400 random runs", () => {
    let found = 0;
    fc.assert(
      fc.property(runs, from(0.05, 3), ({ current, run, temperature, parallel }, drop) => {
        const fits = sizes.find((row) => current * ohms(row["5"], run, temperature, parallel) <= drop);
        fc.pre(fits !== undefined);
        found += 1;
        expect(callByName(conductorLeast, { current, run, drop, temperature, parallel })).toBe(fits?.size);
      }),
      { numRuns: 400, seed: 12 },
    );
    expect(found).toBeGreaterThanOrEqual(400);
  });

  it("CONDUCTOR.LEAST takes a size whose drop equals the limit to the last bit", () => {
    fc.assert(
      fc.property(runs, ({ row, current, run, temperature, parallel }) => {
        fc.pre(current > 0);
        const drop = callByName(conductorDrop, { current, run, area: row.size, temperature, parallel });
        fc.pre(drop <= 100);
        expect(callByName(conductorLeast, { current, run, drop, temperature, parallel })).toBe(row.size);
      }),
      { numRuns: 400, seed: 24 },
    );
  });

  it("COPPER.RESISTANCE agrees with the units library", () => {
    agrees(
      copperResistance,
      byUnits(
        copperResistance,
        "1/58 ohm mm^2/m * run / area * (1 + 0.00393 / K * ((number(temperature, degC) - 20) K))",
      ),
      { within: { area: [0.5, 400], run: [0.1, 500] } },
    );
  });
});

describe("gauges", () => {
  const gauges = [...Array(18).keys()].map((i) => String(18 - i)).concat("1/0", "2/0", "3/0", "4/0");

  it("AWG.AREA follows 39 equal ratios from 0.005 inch to 0.46 inch for all 22 gauges", () => {
    expect(gauges.length).toBe(22);
    gauges.forEach((gauge, place) => {
      // Counted from 4/0 downwards in logarithms, where the function counts from 36 AWG upwards in powers.
      const below = gauges.length - 1 - place;
      const diameter = Math.exp(Math.log(0.46) - (below / 39) * Math.log(0.46 / 0.005)) * 25.4;
      near(callByName(awgArea, { gauge }), (Math.PI * diameter ** 2) / 4);
    });
  });

  it("AWG.AREA reads a number as its gauge", () => {
    for (const gauge of [18, 10, 2, 1]) {
      expect(callFunction(awgArea, [gauge])).toBe(callFunction(awgArea, [String(gauge)]));
    }
  });

  it("AWG.LEAST is the smallest gauge of 33 CFR 183.425 table 5 that has the area, for 400 random areas", () => {
    const listed = rowsOf("boat-cable-current.csv").map((row) => String(row.awg));
    fc.assert(
      fc.property(from(0.01, 107.2), (area) => {
        const wanted = listed
          .map((gauge) => ({ gauge, area: callByName(awgArea, { gauge }) }))
          .filter((one) => one.area >= area)
          .reduce((a, b) => (a.area < b.area ? a : b));
        expect(callFunction(awgLeast, [area])).toBe(wanted.gauge);
      }),
      { numRuns: 400, seed: 258 },
    );
    for (const gauge of listed) {
      expect(callFunction(awgLeast, [callByName(awgArea, { gauge })])).toBe(gauge);
    }
  });
});
