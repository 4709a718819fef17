import { describe, expect, it } from "vitest";
import { convert } from "../../src/functions/general/convert";
import { thrustHold } from "../../src/functions/thrust/hold";
import { thrustIdeal } from "../../src/functions/thrust/ideal";
import { jetSpeed } from "../../src/functions/thrust/jet-speed";
import { thrustMerit } from "../../src/functions/thrust/merit";
import { thrustPivot } from "../../src/functions/thrust/pivot";
import { thrustStatic } from "../../src/functions/thrust/static";
import { thrustTurn } from "../../src/functions/thrust/turn";
import { tunnelInlet } from "../../src/functions/tunnel/inlet";
import { tunnelLoss } from "../../src/functions/tunnel/loss";
import { windLimit } from "../../src/functions/wind/limit";
import { windPressure } from "../../src/functions/wind/pressure";
import { windPush } from "../../src/functions/wind/push";
import { callByName } from "../functions/second-calculation";
import { cell, rowsOf } from "./values";

// toBeCloseTo(value, n) allows half a unit of the n-th decimal: n is what the source prints.

describe("side force needed", () => {
  it.each(rowsOf("sizing.csv"))(
    "12 m boat in force $force: wind, push and thrust (own arithmetic, 1 decimal)",
    (row) => {
      const speed = callByName(windLimit, { force: cell(row, "force") });
      expect(speed).toBe(cell(row, "speed"));
      expect(callByName(windPressure, { speed })).toBeCloseTo(cell(row, "pressure"), 2);
      const push = callByName(windPush, { area: 24, speed });
      expect(push).toBeCloseTo(cell(row, "push"), 1);
      expect(callByName(thrustHold, { push, at: 6, pivot: 0, thruster: 10.8 })).toBeCloseTo(cell(row, "thrust"), 1);
    },
  );

  it("20 kn on the same boat: 1401 N of wind need 778 N (own arithmetic, whole newtons)", () => {
    const push = callByName(windPush, { area: 24, speed: (20 * 1852) / 3600 });
    expect(push).toBeCloseTo(1400.54, 1);
    expect(callByName(thrustHold, { push, at: 6, pivot: 0, thruster: 10.8 })).toBeCloseTo(778, 0);
  });

  it.each(rowsOf("steady-turn.csv"))(
    "THRUST.TURN of a $length m boat (strip integral, own arithmetic, 3 decimals)",
    (row) => {
      const { length, draught, coefficient, thrust, arm } = row;
      const rate = callByName(thrustTurn, { length, draught, coefficient, thrust, arm });
      expect(rate).toBeCloseTo(cell(row, "degrees"), 3);
      expect((rate * Math.PI) / 180).toBeCloseTo(cell(row, "radians"), 5);
      expect(360 / rate).toBeCloseTo(cell(row, "full_turn"), 1);
    },
  );

  it.each(rowsOf("pivot.csv"))("THRUST.PIVOT at an arm share of $arm (strip integral, own arithmetic)", (row) => {
    const p = callByName(thrustPivot, { armShare: cell(row, "arm") });
    // 6 decimals, the row next to the stern 4.
    expect(p).toBeCloseTo(cell(row, "pivot"), cell(row, "arm") === 0.2501 ? 4 : 6);
    const drag = ((0.5 - p) ** 3 - (0.5 + p) ** 3) / 3;
    expect(drag).toBeCloseTo(cell(row, "drag"), 5);
  });
});

describe("thrust at hand", () => {
  it.each(rowsOf("ideal-thrust.csv"))(
    "$power W in $diameter m, jet $jet, efficiency $efficiency (momentum theory, own arithmetic, 2 decimals)",
    (row) => {
      const { density, power, jet } = row;
      const efficiency = cell(row, "efficiency");
      const diameter = 1000 * cell(row, "diameter");
      const thrust = callByName(thrustIdeal, { power: efficiency * cell(row, "power"), diameter, jet, density });
      expect(thrust).toBeCloseTo(cell(row, "thrust"), cell(row, "power") === 1e6 ? 1 : 2);
      expect(callByName(thrustMerit, { thrust, power, diameter, density })).toBeCloseTo(cell(row, "merit"), 4);
      // The far jet of an open propeller has half the section of its disc.
      const section = diameter * Math.sqrt(cell(row, "jet"));
      expect(callByName(jetSpeed, { thrust, diameter: section, density })).toBeCloseTo(cell(row, "speed"), 4);
      expect(thrust / (cell(row, "density") * cell(row, "speed"))).toBeCloseTo(cell(row, "flow"), 4);
      expect((thrust / cell(row, "power")) * 1000).toBeCloseTo(cell(row, "per_kilowatt"), 2);
      if (jet === 1) {
        const same = callByName(thrustStatic, { power, diameter, loss: 1, efficiency, hub: 0, density });
        expect(same).toBeCloseTo(thrust, 6);
      }
    },
  );

  it.each(rowsOf("rounding-thrust.csv"))(
    "THRUST.STATIC at an edge of $radius diameters (Crane TP-410, own arithmetic, 4 decimals)",
    (row) => {
      const inlet = callByName(tunnelInlet, { edgeRadius: 200 * cell(row, "radius"), diameter: 200 });
      const left = (extra: Readonly<Record<string, number>>) => {
        const given = { power: 3000, diameter: 200 };
        const loss = callByName(tunnelLoss, { inlet, ...extra });
        return callByName(thrustStatic, { ...given, loss }) / callByName(thrustStatic, { ...given, loss: 1 });
      };
      expect(left({})).toBeCloseTo(cell(row, "entry_only"), 4);
      expect(left({ friction: 0.06 })).toBeCloseTo(cell(row, "with_friction"), 4);
      expect(left({ other: 0.3 })).toBeCloseTo(cell(row, "with_grid"), 4);
    },
  );

  it("a rounded edge of 10 % of the radius gains 16.4 % over a sharp one (Crane TP-410, 5 decimals)", () => {
    const given = { power: 3000, diameter: 200 };
    const rounded = callByName(thrustStatic, { ...given, loss: 1 + 0.195 });
    expect(rounded / callByName(thrustStatic, { ...given, loss: 1.5 })).toBeCloseTo(1.16363, 5);
  });

  it("THRUST.MERIT of an open propeller's ideal thrust is the square root of 2 (momentum theory)", () => {
    const given = { power: 3000, diameter: 185 };
    const thrust = callByName(thrustIdeal, { ...given, jet: 0.5 });
    expect(callByName(thrustMerit, { ...given, thrust })).toBeCloseTo(Math.SQRT2, 9);
    expect(callByName(thrustMerit, { ...given, thrust: callByName(thrustIdeal, given) })).toBeCloseTo(2, 9);
  });

  it("CONVERT: one kgf for each PS is 13.3333 N/kW (a PS is 75 kgf m/s)", () => {
    const newtons = callByName(convert, { value: 1, from: "kgf", to: "N" });
    const kilowatts = callByName(convert, { value: 1, from: "PS", to: "W" }) / 1000;
    expect(newtons / kilowatts).toBeCloseTo(40 / 3, 9);
  });

  it("THRUST.MERIT of 607.8 N from 3 kW in 185 mm is 0.952 (own arithmetic, 3 decimals)", () => {
    expect(callByName(thrustMerit, { thrust: 607.8, power: 3000, diameter: 185 })).toBeCloseTo(0.952, 3);
  });
});
