import { describe, expect, it } from "vitest";
import { convert } from "../../src/functions/general/convert";
import { setCells } from "../../src/notebook/edit-cells";
import { positionOf, readAddress } from "../../src/notebook/rows";
import { callByName } from "../functions/second-calculation";
import { openWorked, valueAt } from "./worked";

/** Published check values of rules that stand on the pages as plain formulas and need no named function. */
describe("a plain formula of the worked notebook", () => {
  const live = openWorked("three-hulls");

  function worked(result: string, inputs: Readonly<Record<string, number>>): number {
    live.apply("try", (notebook) =>
      setCells(
        notebook,
        Object.entries(inputs).map(([row, value]) => ({
          ...positionOf(notebook, readAddress(`${row}@Sloop`)),
          text: String(value),
        })),
      ),
    );
    const value = valueAt(live, `${result}@Sloop`);
    live.undo();
    if (value.kind !== "number") throw new Error(JSON.stringify(value));
    return value.value;
  }

  it.each([
    [6, 8, 9.6],
    [8, 15, 24],
    [10, 25, 50],
  ])("gives bolts of %d mm at %d kN %d N m dry (Shigley, Mechanical Engineering Design, from memory)", (...row) => {
    const [bolt, preload, torque] = row;
    const inputs = { "Hand-over.bolt": bolt, "Hand-over.preload": preload, "Hand-over.torque_factor": 0.2 };
    expect(worked("Hand-over.torque_expected", inputs)).toBeCloseTo(torque, 2);
  });

  it.each([
    [0.2, 30.88],
    [0.15, 23.16],
  ])("gives a bolt of 3/8 in at 4940 lbf, factor %d, %d lbf ft (public torque page, recomputed)", (factor, feet) => {
    const newtons = callByName(convert, { value: 4940, from: "lbf", to: "N" });
    const inputs = {
      "Hand-over.bolt": 9.525,
      "Hand-over.preload": newtons / 1000,
      "Hand-over.torque_factor": factor,
    };
    const joules = callByName(convert, { value: 1, from: "flb", to: "J" });
    expect(worked("Hand-over.torque_expected", inputs) / joules).toBeCloseTo(feet, 1);
  });

  it("reads 7.0 mohm from 12.6 V, 10.5 V and 300 A (sag in a public cruising report, volts at rest assumed)", () => {
    const inputs = {
      "Hand-over.battery": 12.6,
      "Hand-over.motor_port": 10.5,
      "Hand-over.motor_starboard": 10.6,
      "Hand-over.current_port": 300,
      "Hand-over.current_starboard": 290,
    };
    expect(worked("Hand-over.loop", inputs)).toBeCloseTo(7, 1);
  });

  it("lays 24 points of a tube of 185 mm 24.216 mm apart, the last at 556.978 (own arithmetic, 3 decimals)", () => {
    const step = worked("Tunnel.girth_step", { "Tunnel.diameter": 185, "Tunnel.wall": 0 });
    expect(step).toBeCloseTo(24.216, 3);
    expect(23 * step).toBeCloseTo(556.978, 3);
  });
});
