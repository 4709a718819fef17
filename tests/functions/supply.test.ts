import fc from "fast-check";
import { unit } from "mathjs";
import { describe, expect, it } from "vitest";
import { callFunction } from "../../src/formula/call";
import type { AnyDefinition } from "../../src/formula/definition";
import { batteryAir } from "../../src/functions/battery/air";
import { batteryBank } from "../../src/functions/battery/bank";
import { batteryOpening } from "../../src/functions/battery/opening";
import { batteryResistance } from "../../src/functions/battery/resistance";
import { batteryRuntime } from "../../src/functions/battery/runtime";
import { motorSpeedPm } from "../../src/functions/motor/speed-pm";
import { motorSpeedSeries } from "../../src/functions/motor/speed-series";
import { anodeHours } from "../../src/functions/service/anode-hours";
import { oilHead } from "../../src/functions/service/oil-head";
import { supplyFault } from "../../src/functions/supply/fault";
import { fuseNext } from "../../src/functions/supply/fuse-next";
import { lugPull } from "../../src/functions/supply/lug-pull";
import { bisect } from "./bisect";
import { agrees, byUnits, callByName, type Numbers } from "./second-calculation";

describe("battery, links and upkeep against the units library", () => {
  const relations: readonly { definition: AnyDefinition; relation: string }[] = [
    { definition: batteryBank, relation: "resistance * series / parallel" },
    { definition: batteryAir, relation: "0.05 m^3/(A h) * cells * (gassing * capacity)" },
    { definition: batteryOpening, relation: "28 cm^2 * air / (1 m^3/h)" },
    { definition: supplyFault, relation: "volts / resistance" },
    { definition: anodeHours, relation: "mass * capacity / current" },
  ];
  it.each(relations)("$definition.name = $relation", ({ definition, relation }) => {
    agrees(definition, byUnits(definition, relation));
  });

  it("OIL.HEAD = depth * (water - oil) / oil", () => {
    agrees(oilHead, byUnits(oilHead, "depth * (water - oil) / oil"), {
      where: ({ oil = 0, water = 0 }) => oil <= water,
      // The difference of two nearly equal densities: 1e-9 of a thousandth of the depth.
      scale: ({ depth = 0 }) => depth / 1000,
    });
  });

  it("BATTERY.RESISTANCE carries cranking amperes at the voltage where the cranking test ends", () => {
    agrees(
      batteryResistance,
      (given) => {
        const { cranking, cells, rest, end } = given as { [K in "cranking" | "cells" | "rest" | "end"]: number };
        const across = unit(cells * rest, "V").toNumber("mV") - unit(cells * end, "V").toNumber("mV");
        return unit(across / cranking, "mohm").toNumber("ohm");
      },
      { where: ({ rest = 0, end = 0 }) => rest > end + 0.01 },
    );
  });

  it("BATTERY.RUNTIME by logarithms", () => {
    agrees(batteryRuntime, (given) => {
      const { capacity, rated, exponent, current } = given as Record<string, number> as {
        [K in "capacity" | "rated" | "exponent" | "current"]: number;
      };
      return Math.exp(Math.log(rated) + exponent * (Math.log(capacity) - Math.log(current) - Math.log(rated)));
    });
  });

  it("LUG.PULL grows by 60 N a mm2 and stops at 20 kN", () => {
    agrees(lugPull, ({ area = 0 }) => (area < 1000 / 3 ? 60 * area : 20_000));
  });
});

describe("FUSE.NEXT", () => {
  const nec = `1 3 6 10 15 20 25 30 35 40 45 50 60 70 80 90 100 110 125 150 175 200 225 250 300 350 400 450 500 600 601
    700 800 1000 1200 1600 2000 2500 3000 4000 5000 6000`;
  const r10 = "2 4 6 10 16 20 25 32 40 50 63 80 100 125 160 200 250 315 400 500 630 800 1000 1250 1600";
  it.each([
    ["NEC", nec],
    ["R10", r10],
  ])("is the smallest of the ratings not below the current, series %s", (series, text) => {
    const ratings = text.split(/\s+/).map(Number);
    const largest = Math.max(...ratings);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10 * largest }), (tenths) => {
        const current = tenths / 10;
        const wanted = Math.min(...ratings.filter((rating) => rating >= current));
        expect(callFunction(fuseNext, [current, series])).toBe(wanted);
      }),
      { numRuns: 400, seed: 240 },
    );
    for (const rating of ratings) expect(callFunction(fuseNext, [rating, series])).toBe(rating);
  });
});

describe("a motor on a sagging supply", () => {
  const within = {
    open: [1, 260],
    outside: [0, 0.5],
    ratedVolts: [6, 260],
    ratedCurrent: [1, 800],
    motor: [0, 0.1],
  } as const;
  const turns = ({ ratedVolts = 0, ratedCurrent = 0, motor = 0 }: Numbers) => ratedVolts > motor * ratedCurrent;

  /** Volts that the loop needs at a speed ratio, less those it has. */
  const missing = (given: Numbers, series: boolean) => (s: number) => {
    const { open, outside, ratedVolts, ratedCurrent, motor } = given as Record<keyof typeof within, number>;
    const amps = ratedCurrent * (series ? s : s * s);
    const turning = (ratedVolts - motor * ratedCurrent) * (series ? s * s : s);
    return amps * (motor + outside) + turning - open;
  };

  it("MOTOR.SPEEDPM is the root of its voltage balance", () => {
    agrees(motorSpeedPm, (given) => bisect(missing(given, false), 0, 1e6), { within, where: turns, relative: 1e-8 });
  });

  it("MOTOR.SPEEDSERIES is the root of its voltage balance", () => {
    agrees(motorSpeedSeries, (given) => bisect(missing(given, true), 0, 1e6), { within, where: turns, relative: 1e-8 });
  });

  it.each([motorSpeedPm, motorSpeedSeries])(
    "$name is 1 at the rated point and falls with resistance outside",
    (motor) => {
      const rated = { open: 24, outside: 0, ratedVolts: 24, ratedCurrent: 250, motor: 0.012 };
      expect(callByName(motor, rated)).toBeCloseTo(1, 14);
      const speeds = [0, 0.002, 0.008, 0.05].map((outside) => callByName(motor, { ...rated, outside }));
      expect([...speeds].sort((a, b) => b - a)).toEqual(speeds);
      expect(new Set(speeds).size).toBe(4);
    },
  );

  it("MOTOR.SPEEDPM and MOTOR.SPEEDSERIES do not lose digits with next to no resistance", () => {
    const small = { open: 20, outside: 1e-15, ratedVolts: 24, ratedCurrent: 250, motor: 0 };
    expect(callByName(motorSpeedPm, small)).toBeCloseTo(20 / 24, 12);
    expect(callByName(motorSpeedSeries, small)).toBeCloseTo(Math.sqrt(20 / 24), 12);
  });
});
