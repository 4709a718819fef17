import { describe, expect, it } from "vitest";
import { airDensityAt } from "../../src/functions/wind/air-density";
import { currentCoefficient } from "../../src/functions/wind/current-coefficient";
import { currentPush } from "../../src/functions/wind/current-push";
import { currentShallow } from "../../src/functions/wind/current-shallow";
import { waterDensity } from "../../src/functions/wind/water-density";
import { waterViscosity } from "../../src/functions/wind/water-viscosity";
import { crossFlow } from "../../src/tables/cross-flow";
import { seaViscosity } from "../../src/tables/sea-viscosity";
import { refuses, refusesEveryBadArgument } from "./refusals";
import { agrees, byUnits, callByName } from "./second-calculation";

/** Straight lines through points, as a sum of hats: 1 at their own point, 0 at the neighbours. */
function hats(rows: readonly (readonly (string | number | null)[])[]): (x: number) => number {
  const points = rows.map(([x, y]) => [Number(x), Number(y)] as const);
  return (x) =>
    points.reduce((sum, [x0, y0], i) => {
      const [left] = points[i - 1] ?? [x0 - 1];
      const [right] = points[i + 1] ?? [x0 + 1];
      const hat = x <= x0 ? 1 - (x0 - x) / (x0 - left) : 1 - (x - x0) / (right - x0);
      return sum + y0 * Math.max(0, hat);
    }, 0);
}

describe("current", () => {
  it("CURRENT.PUSH agrees with the units library", () => {
    agrees(currentPush, byUnits(currentPush, "coefficient * length * draught * density * speed ^ 2 / 2"));
  });

  it("CURRENT.COEFFICIENT agrees with the straight lines as a sum of hats", () => {
    const line = hats(crossFlow.rows);
    agrees(currentCoefficient, ({ beam = 0, draught = 1 }) => line(beam / 2 / draught), {
      within: { beam: [0.5, 6], draught: [0.3, 3] },
      where: ({ beam = 0, draught = 1 }) => beam / 2 / draught <= 4.003,
    });
  });

  it("CURRENT.COEFFICIENT refuses a boat that is off the curve", () => {
    refuses(
      currentCoefficient,
      { beam: 4, draught: 0.4 },
      "missing",
      "beam: 4 m on a draught of 0.4 m gives 5 as beam over twice the draught; the curve runs from 0.01086 to 4.003",
    );
  });

  it("CURRENT.SHALLOW agrees with the logarithm of its power", () => {
    agrees(
      currentShallow,
      ({ deep = 0, draught = 1, depth = 1, aground = 0, exponent = 0 }) => {
        const share = Math.exp(exponent * (Math.log(draught) - Math.log(depth)));
        return deep * (1 - share) + aground * share;
      },
      { within: { draught: [0.2, 10], depth: [0.2, 50] }, where: ({ draught = 0, depth = 0 }) => draught <= depth },
    );
  });

  it("CURRENT.SHALLOW with the keel just on the bottom gives the coefficient aground, and refuses less water", () => {
    expect(callByName(currentShallow, { deep: 0.6, draught: 2, depth: 2 })).toBe(3.2);
    refuses(
      currentShallow,
      { deep: 0.6, draught: 2, depth: 1.5 },
      "range",
      "draught: 2 m is more than the depth 1.5 m; the boat would be aground",
    );
  });
});

describe("water and air", () => {
  it("WATER.DENSITY agrees with the powers of EOS-80 added up, coefficients of UNESCO 36 typed again", () => {
    const powers = (t: number, coefficients: readonly number[]) =>
      coefficients.map((c, i) => c * t ** i).reduce((a, b) => a + b);
    agrees(waterDensity, ({ temperature: t = 0, salinity: S = 0 }) =>
      [
        powers(t, [999.842594, 0.06793952, -0.00909529, 0.0001001685, -0.000001120083, 0.000000006536332]),
        S * powers(t, [0.824493, -0.0040899, 0.000076438, -0.00000082467, 0.0000000053875]),
        S ** 1.5 * powers(t, [-0.00572466, 0.00010227, -0.0000016546]),
        S ** 2 * 0.00048314,
      ].reduce((a, b) => a + b),
    );
  });

  it("WATER.VISCOSITY agrees with the straight lines as a sum of hats", () => {
    const line = hats(seaViscosity.rows);
    agrees(waterViscosity, ({ temperature = 0 }) => line(temperature));
  });

  it("AIR.DENSITY agrees with the gas law by the molar gas constant of the standard atmosphere", () => {
    // R* 8314.32 J/(kmol K) and 28.964420 kg/kmol, ISO 2533; their quotient is printed as 287.05287.
    agrees(
      airDensityAt,
      ({ temperature = 0, pressure = 0 }) => (pressure * 28.96442) / (8314.32 * (temperature + 273.15)),
      { relative: 2e-8 },
    );
  });

  it.each([
    [currentPush, { length: 11, draught: 0.8, speed: 0.5, coefficient: 0.61 }],
    [currentCoefficient, { beam: 3, draught: 0.8 }],
    [currentShallow, { deep: 0.6, draught: 0.8, depth: 2 }],
    [waterDensity, { temperature: 15 }],
    [waterViscosity, { temperature: 15 }],
    [airDensityAt, { temperature: 15 }],
  ])("$0.name names the argument that is blank, text or outside its limits", (definition, good) => {
    refusesEveryBadArgument(definition, good);
  });

  it("says temperatures in degrees C", () => {
    refuses(waterDensity, { temperature: 60 }, "range", "temperature: 60 °C (allowed -2 to 40 °C)");
    expect(callByName(waterDensity, { temperature: 40, salinity: 42 })).toBeGreaterThan(1000);
  });
});
