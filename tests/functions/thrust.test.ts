import { describe, expect, it } from "vitest";
import { thrustHold } from "../../src/functions/thrust/hold";
import { thrustIdeal } from "../../src/functions/thrust/ideal";
import { jetSpeed } from "../../src/functions/thrust/jet-speed";
import { thrustMerit } from "../../src/functions/thrust/merit";
import { thrustPivot } from "../../src/functions/thrust/pivot";
import { thrustStatic } from "../../src/functions/thrust/static";
import { thrustTurn } from "../../src/functions/thrust/turn";
import { bisect } from "./bisect";
import { refuses, refusesEveryBadArgument } from "./refusals";
import { agrees, byUnits, callByName, type Numbers } from "./second-calculation";

/** Simpson's rule, exact for the cubes that appear here. */
const simpson = (f: (x: number) => number, from: number, to: number) =>
  ((to - from) / 6) * (f(from) + 4 * f((from + to) / 2) + f(to));

describe("turning", () => {
  it("THRUST.HOLD balances the moments about the pivot", () => {
    agrees(thrustHold, byUnits(thrustHold, "(push * at - push * pivot) / (thruster - pivot)"), {
      within: { at: [-20, 20], pivot: [-20, 20], thruster: [21, 40] },
      scale: ({ push = 0 }) => Math.abs(push),
    });
  });

  it("THRUST.HOLD with the two places changed over undoes itself", () => {
    const thrust = callByName(thrustHold, { push: 1400, at: 6.3, pivot: 0.5, thruster: 10.8 });
    expect(callByName(thrustHold, { push: thrust, at: 10.8, pivot: 0.5, thruster: 6.3 })).toBeCloseTo(1400, 9);
  });

  it("THRUST.HOLD refuses a thruster at the pivot", () => {
    refuses(
      thrustHold,
      { push: 800, at: 6, pivot: 2, thruster: 2 },
      "range",
      "thruster: 2 m is the pivot itself, where no thrust turns the boat",
    );
  });

  it("THRUST.TURN balances thrust times arm with the drag of the strips", () => {
    agrees(
      thrustTurn,
      ({ thrust = 0, arm = 0, length = 1, draught = 1, coefficient = 1, density = 1 }) => {
        const strips = 2 * simpson((x) => x ** 3, 0, length / 2);
        const resistance = 0.5 * density * coefficient * draught * strips;
        return (Math.sqrt((thrust * arm) / resistance) * 180) / Math.PI;
      },
      { within: { length: [3, 100] } },
    );
  });

  it("THRUST.PIVOT balances force and moment of the strips, found by halving", () => {
    agrees(
      thrustPivot,
      ({ armShare: x = 0 }) => {
        // Moment of the drag of all strips about the thruster, boat turning about p.
        const moment = (p: number) =>
          simpson((s) => (s - p) ** 2 * (x - s), p, 0.5) - simpson((s) => (s - p) ** 2 * (x - s), -0.5, p);
        return bisect((p) => -moment(p), -0.5, 0);
      },
      { relative: 1e-10 },
    );
  });

  it("THRUST.PIVOT is exactly at the stern for a thruster a quarter of the length ahead of midship", () => {
    expect(callByName(thrustPivot, { armShare: 0.25 })).toBe(-0.5);
  });
});

describe("momentum theory", () => {
  const disc = ({ diameter = 0, hub = 0 }: Numbers) =>
    (Math.PI / 4) * ((diameter / 1000) ** 2 - (hub * diameter) ** 2 / 1e6);

  it("THRUST.IDEAL agrees with the speed of the jet found from the power first", () => {
    agrees(thrustIdeal, (given) => {
      const { power = 0, jet = 0, density = 0 } = given;
      const section = jet * disc(given);
      const speed = Math.cbrt((2 * power) / (density * section));
      return density * section * speed ** 2;
    });
  });

  it("THRUST.STATIC agrees with the speed of the jet found from the power left", () => {
    agrees(thrustStatic, (given) => {
      const { power = 0, loss = 1, efficiency = 0, density = 0 } = given;
      const speed = Math.cbrt((2 * power * efficiency) / (loss * density * disc(given)));
      return density * disc(given) * speed ** 2;
    });
  });

  it("THRUST.STATIC without any loss is THRUST.IDEAL", () => {
    const given = { power: 4000, diameter: 185, hub: 0.25 };
    expect(callByName(thrustStatic, { ...given, loss: 1, efficiency: 1 })).toBeCloseTo(
      callByName(thrustIdeal, given),
      9,
    );
  });

  it("THRUST.MERIT and JET.SPEED agree with the units library", () => {
    agrees(thrustMerit, byUnits(thrustMerit, "sqrt(thrust ^ 3 / (density * pi / 4)) / (power * diameter)"), {
      within: { power: [1, 2e6] },
    });
    agrees(jetSpeed, byUnits(jetSpeed, "sqrt(4 * thrust / (pi * density * (1 - hub) * (1 + hub))) / diameter"));
  });

  it("JET.SPEED is twice the power over the thrust of an ideal tunnel", () => {
    const given = { power: 3000, diameter: 185, hub: 0.3 };
    const thrust = callByName(thrustIdeal, given);
    expect(callByName(jetSpeed, { thrust, diameter: 185, hub: 0.3 })).toBeCloseTo(6000 / thrust, 9);
    expect(
      callByName(thrustMerit, {
        thrust: callByName(thrustIdeal, { power: 3000, diameter: 185 }),
        power: 3000,
        diameter: 185,
      }),
    ).toBeCloseTo(2, 12);
  });
});

describe("refusals", () => {
  it.each([
    [thrustHold, { push: 800, at: 6, pivot: 0, thruster: 10.8 }],
    [thrustTurn, { thrust: 600, arm: 4.8, length: 12, draught: 0.8, coefficient: 0.65 }],
    [thrustPivot, { armShare: 0.4 }],
    [thrustIdeal, { power: 3000, diameter: 185 }],
    [thrustStatic, { power: 3000, diameter: 185, loss: 1.27 }],
    [thrustMerit, { thrust: 600, power: 3000, diameter: 185 }],
    [jetSpeed, { thrust: 600, diameter: 185 }],
  ])("$0.name names the argument that is blank, text or outside its limits", (definition, good) => {
    refusesEveryBadArgument(definition, good);
  });
});
