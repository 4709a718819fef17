import { describe, expect, it } from "vitest";
import { convert } from "../../src/functions/general/convert";
import { windCoefficient } from "../../src/functions/wind/coefficient";
import { windForce } from "../../src/functions/wind/force";
import { windHeight } from "../../src/functions/wind/height";
import { windLimit } from "../../src/functions/wind/limit";
import { windPressure } from "../../src/functions/wind/pressure";
import { windPush } from "../../src/functions/wind/push";
import { windYaw } from "../../src/functions/wind/yaw";
import { callByName } from "../functions/second-calculation";
import { cell, rowsOf } from "./values";

// toBeCloseTo(value, n) allows half a unit of the n-th decimal: n is what the source prints.

const knot = 1852 / 3600;

describe("wind", () => {
  it.each(rowsOf("wind-pressure.csv"))(
    "WIND.PRESSURE and WIND.PUSH at $knots kn (own arithmetic, 3 decimals)",
    (row) => {
      const speed = cell(row, "knots") * knot;
      expect(callByName(convert, { value: cell(row, "knots"), from: "kn", to: "m/s" })).toBeCloseTo(
        cell(row, "speed"),
        4,
      );
      expect(callByName(windPressure, { speed })).toBeCloseTo(cell(row, "pressure"), 3);
      for (const coefficient of [0.8, 0.9, 1, 1.2]) {
        const push = cell(row, `push_${coefficient.toFixed(1)}`);
        expect(callByName(windPush, { area: 1, speed, coefficient })).toBeCloseTo(push, 3);
      }
    },
  );

  it.each(rowsOf("beaufort.csv"))("WIND.LIMIT and WIND.FORCE of force $force (WMO-No. 306, Manual on Codes)", (row) => {
    const force = cell(row, "force");
    expect(callByName(windLimit, { force })).toBe(cell(row, "upper"));
    expect(callByName(windForce, { speed: cell(row, "lower") })).toBe(force);
    expect(callByName(windForce, { speed: cell(row, "upper") })).toBe(force);
    expect(callByName(windForce, { speed: cell(row, "knots") * knot })).toBe(force);
    expect(callByName(windPressure, { speed: cell(row, "upper") })).toBeCloseTo(cell(row, "pressure"), 2);
  });

  it("WIND.FORCE of 32.7 m/s or 64 kn is 12 (WMO-No. 306, Manual on Codes)", () => {
    expect(callByName(windForce, { speed: 32.7 })).toBe(12);
    expect(callByName(windForce, { speed: 64 * knot })).toBe(12);
  });

  it.each(rowsOf("wind-profile.csv"))("WIND.HEIGHT at $height m (46 CFR 28.575, 4 decimals)", (row) => {
    const share = callByName(windHeight, { height: cell(row, "height") });
    expect(share).toBeCloseTo(cell(row, "rule"), 4);
    // The rule's own line gives the wind speed: at 10 m it is 0.127 ln 10 + 0.772 of its S.
    expect(Math.sqrt(share) * (0.127 * Math.log(10) + 0.772)).toBeCloseTo(cell(row, "speed"), 4);
    // The text beside the function says that a 1/7-power profile stays within 3.4 %.
    expect(Math.abs(cell(row, "power") / share - 1)).toBeLessThan(0.0345);
  });

  it.each(rowsOf("wind-yaw.csv"))("WIND.YAW at $angle degrees, speed boat (Blendermann 1994, 5 decimals)", (row) => {
    const angle = cell(row, "angle");
    const given = { area: 1, length: 1, angle, speed: 1, end: angle > 90 ? 0.6 : 0.55, density: 1 };
    const yaw = 2 * callByName(windYaw, { ...given, ahead: 0 });
    expect(yaw).toBeCloseTo(cell(row, "yaw"), 5);
    // A centroid one length farther ahead adds just the side force.
    expect(2 * callByName(windYaw, { ...given, ahead: 1 }) - yaw).toBeCloseTo(cell(row, "side"), 5);
  });

  it.each(rowsOf("wind-loads.csv"))("WIND.COEFFICIENT of a $vessel (Blendermann 1994)", (row) => {
    for (const part of ["side", "bow", "stern", "shape"]) {
      expect(callByName(windCoefficient, { vessel: row.vessel, part })).toBe(cell(row, part));
    }
  });

  it.each(rowsOf("heeling-moment.csv"))(
    "WIND.PUSH at $speed m/s is the side force behind the heeling moment (ISO 12217-1 6.3.2, filled worksheet)",
    (row) => {
      const push = callByName(windPush, {
        area: cell(row, "area"),
        speed: cell(row, "speed"),
        coefficient: 1.2 / 1.225,
      });
      expect(push).toBeCloseTo(cell(row, "push"), 1);
      const arm = (cell(row, "area") / cell(row, "length") + cell(row, "draught")) / 2;
      expect(push * arm).toBeCloseTo(cell(row, "moment"), 1);
    },
  );

  it("WIND.PRESSURE of 26 m/s times 1.217 is the 504 Pa of the IMO 2008 Intact Stability Code, A/2.3 (3 decimals)", () => {
    expect(504 / callByName(windPressure, { speed: 26 })).toBeCloseTo(1.217, 3);
  });
});
