import { describe, expect, it } from "vitest";
import { motorSpeedPm } from "../../src/functions/motor/speed-pm";
import { motorSpeedSeries } from "../../src/functions/motor/speed-series";
import { supplyFault } from "../../src/functions/supply/fault";
import { callByName } from "../functions/second-calculation";

// toBeCloseTo(value, n) allows half a unit of the n-th decimal: n is what the source prints.

describe("motor", () => {
  const thruster = { ratedVolts: 24, ratedCurrent: 250, motor: 0.012 };

  it("MOTOR.SPEEDSERIES: 44 V and 4 A at 100 of 250 rpm (public exercise: 200 V, 10 A, 5 ohm, fan load)", () => {
    const s = callByName(motorSpeedSeries, { open: 44, outside: 0, ratedVolts: 200, ratedCurrent: 10, motor: 5 });
    expect(250 * s).toBeCloseTo(100, 9);
    expect(10 * s).toBeCloseTo(4, 9);
  });

  it("MOTOR.SPEEDSERIES: 19.96 ohm halve 1500 rpm at 7.5 A (public exercise: 200 V, 15 A, 0.08 ohm)", () => {
    const given = { open: 200, outside: 19.96, ratedVolts: 200, ratedCurrent: 15, motor: 0.08 };
    const s = callByName(motorSpeedSeries, given);
    expect(1500 * s).toBeCloseTo(750, 9);
    expect(15 * s).toBeCloseTo(7.5, 9);
  });

  it("MOTOR.SPEEDPM: 3.15 ohm bring 1000 to 800 rpm at 12.8 A (Scilab Textbook Companion 1445, ch. 8 ex. 17)", () => {
    const given = { open: 200, outside: 3.15, ratedVolts: 200, ratedCurrent: 20, motor: 0.1 };
    const s = callByName(motorSpeedPm, given);
    expect(1000 * s).toBeCloseTo(800, 9);
    expect(20 * s * s).toBeCloseTo(12.8, 9);
  });

  it("MOTOR.SPEEDPM at 20 of 24 V: 180.34 A, 2378.1 of 2800 rpm (own arithmetic)", () => {
    const s = callByName(motorSpeedPm, { open: 20, outside: 0, ...thruster });
    expect(250 * s * s).toBeCloseTo(180.34, 2);
    expect(2800 * s).toBeCloseTo(2378.1, 1);
  });

  it("MOTOR.SPEEDSERIES at 20 of 24 V: 226.77 A, 2539.8 of 2800 rpm (own arithmetic)", () => {
    const s = callByName(motorSpeedSeries, { open: 20, outside: 0, ...thruster });
    expect(250 * s).toBeCloseTo(226.77, 2);
    expect(2800 * s).toBeCloseTo(2539.8, 1);
  });

  it.each([
    { motor: motorSpeedPm, power: 2, amps: 237.21, volts: 23.302, thrust: 0.9488, decimals: 4 },
    { motor: motorSpeedSeries, power: 1, amps: 245.71, volts: 23.234, thrust: 0.966, decimals: 4 },
  ])("$motor.name behind 8 mohm at 25.2 V: $amps A, $volts V, thrust $thrust (own arithmetic)", (row) => {
    const s = callByName(row.motor, { open: 25.2, outside: 0.008, ...thruster });
    const amps = 250 * s ** row.power;
    expect(amps).toBeCloseTo(row.amps, 2);
    expect(25.2 - 0.008 * amps).toBeCloseTo(row.volts, 3);
    expect(s * s).toBeCloseTo(row.thrust, row.decimals);
    // A model of constant power would draw 259.47 A, more than rated, where a brushed motor draws less.
    expect(amps).toBeLessThan(250);
  });

  it("current follows voltage to the power 1.8 with magnets and 0.53 in series (own arithmetic)", () => {
    const power = (motor: typeof motorSpeedPm, exponent: number) => {
      const amps = (open: number) => callByName(motor, { open, outside: 0, ...thruster }) ** exponent;
      return Math.log(amps(24.0001) / amps(23.9999)) / Math.log(24.0001 / 23.9999);
    };
    expect(power(motorSpeedPm, 2)).toBeCloseTo(1.8, 1);
    expect(power(motorSpeedSeries, 1)).toBeCloseTo(0.53, 2);
  });

  it.each([
    [24, 0.012, 2000],
    [25.2, 0.02, 1260],
  ])("SUPPLY.FAULT of a stalled motor: %d V over %d ohm is %d A (own arithmetic)", (volts, resistance, amps) => {
    expect(callByName(supplyFault, { volts, resistance })).toBeCloseTo(amps, 9);
  });
});
