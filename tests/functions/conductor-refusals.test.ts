import { describe, expect, it } from "vitest";
import { callFunction } from "../../src/formula/call";
import { batteryResistance } from "../../src/functions/battery/resistance";
import { conductor } from "../../src/functions/conductor";
import { conductorAdiabatic } from "../../src/functions/conductor/adiabatic";
import { awgArea } from "../../src/functions/conductor/awg-area";
import { awgLeast } from "../../src/functions/conductor/awg-least";
import { conductorCarry } from "../../src/functions/conductor/carry";
import { conductorCarryShip } from "../../src/functions/conductor/carry-ship";
import { conductorDrop } from "../../src/functions/conductor/drop";
import { conductorLeast } from "../../src/functions/conductor/least";
import { conductorResistanceOfRun } from "../../src/functions/conductor/resistance";
import { conductorWarm } from "../../src/functions/conductor/warm";
import { motorSpeedPm } from "../../src/functions/motor/speed-pm";
import { motorSpeedSeries } from "../../src/functions/motor/speed-series";
import { oilHead } from "../../src/functions/service/oil-head";
import { fuseNext } from "../../src/functions/supply/fuse-next";
import { refuses, refusesEveryBadArgument } from "./refusals";

describe("blank, text and values past the limits", () => {
  it.each(conductor)("$name", (definition) => {
    refusesEveryBadArgument(definition, definition.examples[0].given);
  });
});

describe("sizes and gauges", () => {
  it.each([
    [55, "area: 55 mm2 is not in IEC 60228 sizes; next is 70 mm2"],
    [0.6, "area: 0.6 mm2 is not in IEC 60228 sizes; next is 0.75 mm2"],
    [53.475, "area: 53.475 mm2 is not in IEC 60228 sizes; next is 70 mm2"],
    [500, "area: 500 mm2 is not in IEC 60228 sizes; it holds 0.5 to 400 mm2"],
  ])("a size of %d mm2 is not in IEC 60228: the next one up is named", (area, sentence) => {
    refuses(conductorResistanceOfRun, { area, run: 10 }, "missing", sentence);
    refuses(conductorDrop, { current: 100, run: 10, area }, "missing", sentence);
  });

  it("CONDUCTOR.RESISTANCE knows classes 2 and 5", () => {
    refuses(conductorResistanceOfRun, { area: 50, run: 10, class: 6 }, "range", "class: 6 (allowed 2, 5)");
    refuses(
      conductorResistanceOfRun,
      { area: 50, run: 10, parallel: 1.5 },
      "kind",
      "parallel: 1.5, needs a whole number",
    );
  });

  it("CONDUCTOR.LEAST says what else to do when no size is enough", () => {
    const given = { current: 1000, run: 100, drop: 0.5 };
    const advice = /^drop: no size up to 400 mm2 .*legs side by side, a shorter run or a higher voltage$/;
    refuses(conductorLeast, given, "missing", advice);
  });

  it("AWG.AREA and CONDUCTOR.CARRY name the gauge that is not theirs", () => {
    refuses(awgArea, { gauge: "5/0" }, "missing", /^gauge: 5\/0 is not in the table \(allowed 4\/0 to 18\)$/);
    refuses(awgArea, { gauge: "0" }, "missing", /^gauge: 0 /);
    refuses(conductorCarry, { gauge: "5" }, "missing", /^gauge: 5 is not in the table/);
    refuses(conductorCarry, { gauge: "2", insulation: 100 }, "range", /^insulation: 100 °C \(allowed 60, 75, /);
    refuses(conductorCarry, { gauge: "2", engineSpace: 1 }, "kind", /^engine space: got 1, needs TRUE or FALSE$/);
  });

  it("AWG.LEAST stops at 4/0", () => {
    refuses(awgLeast, { area: 107.3 }, "missing", /^area: above 4\/0/);
  });

  it("CONDUCTOR.CARRYSHIP refuses an ambient too near its class and a size that the rules do not list", () => {
    const sentence = "ambient: 57 °C is too near the insulation's 60 °C (allowed 20 °C to 5 below the class)";
    refuses(conductorCarryShip, { area: 50, class: 60, ambient: 57 }, "range", sentence);
    expect(callFunction(conductorCarryShip, [50, 60, 55])).toBeGreaterThan(0);
    refuses(conductorCarryShip, { area: 53.5 }, "missing", /^area: 53\.5 mm2 is not in ABS .*next is 70 mm2$/);
  });

  it("FUSE.NEXT names the largest rating of each series", () => {
    refuses(fuseNext, { current: 6001 }, "missing", /^current: above the largest standard rating/);
    refuses(fuseNext, { current: 1601, series: "R10" }, "missing", /^current: above the largest .*1600 A for R10/);
    refuses(fuseNext, { current: 100, series: "R20" }, "range", 'series: "R20" (allowed "NEC" or "R10")');
  });
});

describe("no solution", () => {
  const warm = { area: 35, current: 3000, seconds: 600, ambient: 30, start: 30, carry: 200 };

  it("CONDUCTOR.WARM and CONDUCTOR.ADIABATIC stop at copper's melting point instead of printing nonsense", () => {
    const says = /^current: .* past its melting point \(1085 °C\); take a larger conductor/;
    refuses(conductorWarm, warm, "range", says);
    refuses(conductorWarm, { ...warm, seconds: 1e9 }, "range", says);
    refuses(conductorWarm, { ...warm, start: -40, ambient: 100, seconds: 1e9 }, "range", says);
    refuses(conductorAdiabatic, { area: 0.5, current: 1e5, seconds: 3600 }, "range", says);
    refuses(conductorAdiabatic, { area: 35, current: 3000, seconds: 15 }, "range", says);
    expect(callFunction(conductorAdiabatic, [35, 3000, 10])).toBeLessThan(1085);
  });

  it("CONDUCTOR.WARM needs a rated temperature above its base ambient", () => {
    refuses(conductorWarm, { ...warm, rated: 50, base: 50 }, "range", /^rated: 50 °C is not above the base ambient/);
  });

  it("BATTERY.RESISTANCE needs cells that sag", () => {
    refuses(batteryResistance, { cranking: 800, end: 2.1 }, "range", /^end: 2\.1 V is not below the 2\.1 V/);
  });

  it.each([motorSpeedPm, motorSpeedSeries])("$name needs volts left to turn the motor", (motor) => {
    const given = { open: 24, outside: 0.01, ratedVolts: 24, ratedCurrent: 250, motor: 0.096 };
    refuses(motor, given, "range", /^motor: 0\.096 ohm at 250 A takes all of the rated 24 V/);
  });

  it("OIL.HEAD needs oil that is lighter than the water", () => {
    refuses(oilHead, { depth: 500, oil: 1030 }, "range", /^oil: 1030 kg\/m3 is heavier than the water's 1025/);
  });
});
