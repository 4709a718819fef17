import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inOrder, traceFunction } from "../../src/formula/call";
import { conductorAdiabatic } from "../../src/functions/conductor/adiabatic";
import { conductorWarm } from "../../src/functions/conductor/warm";
import { conductorWithstand } from "../../src/functions/conductor/withstand";
import { agrees, callByName, type Numbers } from "./second-calculation";

/** Classical fourth-order steps of dT/dt = slope(T). */
function march(start: number, seconds: number, slope: (t: number) => number, steps: number): number {
  const h = seconds / steps;
  let t = start;
  for (let i = 0; i < steps; i++) {
    const k1 = slope(t);
    const k2 = slope(t + (h / 2) * k1);
    const k3 = slope(t + (h / 2) * k2);
    const k4 = slope(t + h * k3);
    t += (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
  }
  return t;
}

type Case = Record<"area" | "current" | "seconds" | "ambient" | "start" | "carry" | "rated" | "base", number>;

/** The heat balance itself, in watts per metre: what flows in the copper less what leaves it. */
function warmed(given: Numbers, steps = 4000): number {
  const { area, current, seconds, ambient, start, carry, rated, base } = given as Case;
  const perMetre = (t: number) => ((1 / 58) * (1 + 0.00393 * (t - 20))) / area;
  const leaves = (carry ** 2 * perMetre(rated)) / (rated - base);
  const slope = (t: number) => (current ** 2 * perMetre(t) - leaves * (t - ambient)) / (3.45 * area);
  return march(start, seconds, slope, steps);
}

const good: Case = { area: 70, current: 400, seconds: 180, ambient: 30, start: 30, carry: 300, rated: 105, base: 30 };

/** The carrying current at which heat lost and heat gained grow alike with temperature. */
const balanced = ({ current, rated, base }: Case): number =>
  current * Math.sqrt((0.00393 * (rated - base)) / (1 + 0.00393 * (rated - 20)));

describe("heating", () => {
  it("CONDUCTOR.WARM agrees with the heat balance marched in time", () => {
    agrees(conductorWarm, (given) => warmed(given), {
      within: {
        area: [10, 200],
        current: [0, 1200],
        seconds: [0, 1200],
        ambient: [-10, 60],
        start: [-10, 90],
        carry: [10, 900],
        rated: [60, 200],
        base: [20, 55],
      },
      // Densities of boat cable, and short of the melting point.
      where: (g) => {
        const { area, current, seconds, carry } = g as Case;
        return current / area < 10 && carry / area < 8 && (current / area) ** 2 * seconds < 226 ** 2;
      },
      relative: 1e-8,
      scale: () => 100,
    });
  });

  it("CONDUCTOR.WARM agrees with the heat balance where heating runs away and where it just does not", () => {
    for (const share of [0.1, 0.5, 0.9, 0.99, 0.999, 0.9999, 1, 1.0001, 1.001, 1.01, 1.1]) {
      const given = { ...good, carry: share * balanced(good) };
      const ours = callByName(conductorWarm, given);
      expect(Math.abs(ours - warmed(given)), `share ${share}`).toBeLessThan(1e-8 * ours);
    }
    const b = (share: number) =>
      traceFunction(conductorWarm, inOrder(conductorWarm, { ...good, carry: share * balanced(good) })).get("b");
    expect(b(0.5)).toBeLessThan(0);
    expect(Math.abs(b(1) as number)).toBeLessThan(1e-12);
    expect(b(1.1)).toBeGreaterThan(0);
  });

  it("CONDUCTOR.WARM changes smoothly where its series takes over from the closed form", () => {
    // u grows with time; 0.01 lies between these two.
    const at = (seconds: number) => {
      const trace = traceFunction(conductorWarm, inOrder(conductorWarm, { ...good, seconds }));
      return { u: trace.get("u") as number, t: trace.get("T") as number };
    };
    const edge = (0.01 / at(1).u) * 1;
    const below = at(edge * (1 - 1e-9));
    const above = at(edge * (1 + 1e-9));
    expect(below.u).toBeLessThan(0.01);
    expect(above.u).toBeGreaterThan(0.01);
    expect(Math.abs(above.t - below.t)).toBeLessThan(1e-8);
  });

  it("CONDUCTOR.WARM holds the carrying current for ever at the rated temperature, for 300 random conductors", () => {
    const within = (min: number, max: number) => fc.integer({ min: min * 1000, max: max * 1000 }).map((i) => i / 1000);
    fc.assert(
      fc.property(within(1, 400), within(1, 900), within(60, 200), within(0, 55), (area, carry, rated, base) => {
        // So little current that 1e9 s is not for ever is left out.
        fc.pre(carry / area > 0.1 && carry / area < 50);
        const given = { area, current: carry, seconds: 1e9, ambient: base, start: base, carry, rated, base };
        expect(Math.abs(callByName(conductorWarm, given) - rated)).toBeLessThan(1e-9 * rated);
      }),
      { numRuns: 300, seed: 105 },
    );
  });

  it("CONDUCTOR.WARM at no time is the start, and two runs in a row are one long run", () => {
    expect(callByName(conductorWarm, { ...good, start: 47, seconds: 0 })).toBe(47);
    const middle = callByName(conductorWarm, { ...good, seconds: 70 });
    const end = callByName(conductorWarm, { ...good, start: middle, seconds: 110 });
    expect(Math.abs(end - callByName(conductorWarm, good))).toBeLessThan(1e-10);
  });

  it("CONDUCTOR.ADIABATIC agrees with copper's resistance marched in time", () => {
    const slope = (area: number, current: number) => (t: number) => (current / (226 * area)) ** 2 * (234.5 + t);
    agrees(
      conductorAdiabatic,
      (given) => {
        const { area, current, seconds, start } = given as Case;
        return march(start, seconds, slope(area, current), 2000);
      },
      {
        within: { area: [10, 200], current: [0, 5000], seconds: [0, 600], start: [-40, 200] },
        where: (g) => {
          const { area, current, seconds } = g as Case;
          return (current / (226 * area)) ** 2 * seconds < 1;
        },
        relative: 1e-8,
        scale: () => 100,
      },
    );
  });

  it("CONDUCTOR.WITHSTAND makes as much heat as k allows: I²·t = (k·S)²", () => {
    agrees(conductorWithstand, (given) => {
      const { area, seconds, k } = given as Record<"area" | "seconds" | "k", number>;
      return Math.exp(Math.log(k) + Math.log(area) - Math.log(seconds) / 2);
    });
  });
});
