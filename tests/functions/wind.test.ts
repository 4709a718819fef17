import { describe, expect, it } from "vitest";
import { windCoefficient } from "../../src/functions/wind/coefficient";
import { windForce } from "../../src/functions/wind/force";
import { windHeight } from "../../src/functions/wind/height";
import { windLimit } from "../../src/functions/wind/limit";
import { windPressure } from "../../src/functions/wind/pressure";
import { windPush } from "../../src/functions/wind/push";
import { windSpeedHeld } from "../../src/functions/wind/speed";
import { windYaw } from "../../src/functions/wind/yaw";
import { refuses, refusesEveryBadArgument } from "./refusals";
import { agrees, byUnits, callByName } from "./second-calculation";

describe("wind", () => {
  it("WIND.PRESSURE and WIND.PUSH agree with the units library", () => {
    agrees(windPressure, byUnits(windPressure, "0.5 * density * speed ^ 2"));
    agrees(windPush, byUnits(windPush, "area * coefficient * (0.5 * density * speed ^ 2)"));
  });

  it("WIND.SPEED agrees with the units library and undoes WIND.PUSH", () => {
    agrees(windSpeedHeld, byUnits(windSpeedHeld, "sqrt(push / area / coefficient / (density / 2))"));
    const push = callByName(windPush, { area: 24, speed: 11.3, coefficient: 0.85 });
    expect(callByName(windSpeedHeld, { push, area: 24, coefficient: 0.85 })).toBeCloseTo(11.3, 12);
  });

  it("WIND.HEIGHT agrees with the profile in common logarithms", () => {
    const wind = (height: number) => 0.127 * Math.LN10 * Math.log10(height) + 0.772;
    agrees(windHeight, ({ height = 1 }) => (wind(height) / wind(10)) ** 2);
  });

  it("WIND.LIMIT is the highest speed in tenths that WIND.FORCE still counts to that force", () => {
    for (let force = 0; force <= 11; force++) {
      const limit = callByName(windLimit, { force });
      expect(callByName(windForce, { speed: limit })).toBe(force);
      expect(callByName(windForce, { speed: Math.round(10 * limit + 1) / 10 })).toBe(force + 1);
    }
    expect(callByName(windForce, { speed: 120 })).toBe(12);
  });

  it("WIND.FORCE counts a speed between two printed limits to the lower force", () => {
    expect(callByName(windForce, { speed: 10.75 })).toBe(5);
    expect(callByName(windForce, { speed: 0.25 })).toBe(0);
    // 21 kn is the top of force 5 in the knots of the scale but 10.80 m/s; 27 kn, 13.89 m/s, is force 6 in both.
    expect(callByName(windForce, { speed: (21 * 1852) / 3600 })).toBe(6);
    expect(callByName(windForce, { speed: (27 * 1852) / 3600 })).toBe(6);
  });

  it("WIND.YAW agrees with the units library", () => {
    const gamma = "(angle / (1 rad))";
    const force = "side * sin(angle) / (1 - (shape / 2) * (1 - end_ * frontalShare / side) * sin(2 * angle) ^ 2)";
    agrees(
      windYaw,
      byUnits(windYaw, `0.5 * density * speed ^ 2 * area * (ahead - 0.18 * length * (${gamma} - pi / 2)) * (${force})`),
      {
        within: { length: [3, 100], ahead: [-50, 50] },
        // The two parts of the arm can cancel.
        scale: ({ area = 0, length = 0, ahead = 0, speed = 0, side = 0, density = 0 }) =>
          0.5 * density * speed ** 2 * area * side * (Math.abs(ahead) + 0.18 * length) * 2,
      },
    );
  });

  it("WIND.YAW takes its coefficients from WIND.COEFFICIENT as they are", () => {
    const given = { area: 24, length: 12, ahead: 0.4, angle: 50, speed: 12 };
    const [side, end, shape] = ["side", "bow", "shape"].map((part) => callByName(windCoefficient, { part }));
    expect(callByName(windYaw, { ...given, side, end, shape })).toBe(callByName(windYaw, given));
  });

  it("WIND.COEFFICIENT refuses a vessel or a part that is not in the table", () => {
    refuses(windCoefficient, { vessel: "Raft" }, "range", /^vessel: "Raft" \(allowed "Car carrier" or .+ "Tender"\)$/);
    refuses(
      windCoefficient,
      { part: "top" },
      "range",
      /^part: "top" \(allowed "side" or "bow" or "stern" or "shape"\)$/,
    );
  });

  it("WIND.LIMIT refuses half a force and force 12, which has no upper limit", () => {
    refuses(windLimit, { force: 4.5 }, "kind", "force: 4.5, needs a whole number");
    refuses(windLimit, { force: 12 }, "range", "force: 12 (allowed 0 to 11)");
  });

  it.each([
    [windPressure, { speed: 10 }],
    [windPush, { area: 24, speed: 10 }],
    [windSpeedHeld, { push: 800, area: 24 }],
    [windCoefficient, {}],
    [windHeight, { height: 2 }],
    [windLimit, { force: 5 }],
    [windForce, { speed: 9 }],
    [windYaw, { area: 24, length: 12, ahead: 0, angle: 45, speed: 10 }],
  ])("$0.name names the argument that is blank, text or outside its limits", (definition, good) => {
    refusesEveryBadArgument(definition, good);
  });
});
