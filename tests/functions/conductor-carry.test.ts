import { describe, expect, it } from "vitest";
import { callFunction } from "../../src/formula/call";
import { conductorCarry } from "../../src/functions/conductor/carry";
import { conductorCarryShip } from "../../src/functions/conductor/carry-ship";
import { cell, rowsOf } from "../published/values";
import { callByName } from "./second-calculation";

const near = (ours: number, theirs: number): void =>
  expect(Math.abs(ours - theirs), `${ours}, expected ${theirs}`).toBeLessThanOrEqual(1e-9 * Math.abs(theirs));

describe("carrying current", () => {
  it("CONDUCTOR.CARRY in an engine space is the table's current times the factor of its insulation", () => {
    const factors = { 60: 0.58, 75: 0.75, 80: 0.78, 90: 0.82, 105: 0.85, 125: 0.89, 200: 1 };
    for (const row of rowsOf("boat-cable-current.csv")) {
      for (const [insulation, factor] of Object.entries(factors)) {
        const given = { gauge: String(row.awg), insulation: Number(insulation) };
        near(callByName(conductorCarry, { ...given, engineSpace: true }), cell(row, insulation) * factor);
        expect(callByName(conductorCarry, { ...given, engineSpace: false })).toBe(cell(row, insulation));
      }
    }
  });

  it("CONDUCTOR.CARRY takes insulation of 105 °C outside an engine space where nothing else is said", () => {
    expect(callFunction(conductorCarry, ["2/0"])).toBe(330);
    expect(callFunction(conductorCarry, [2, null, null])).toBe(210);
  });

  it("CONDUCTOR.CARRYSHIP keeps the heat that leaves in step with the temperature room, for every size and class", () => {
    for (const row of rowsOf("ship-cable-current.csv")) {
      for (const kind of [60, 75, 85, 95]) {
        for (let ambient = 20; ambient <= kind - 5; ambient += 2.5) {
          const amps = callByName(conductorCarryShip, { area: cell(row, "size"), class: kind, ambient });
          const room = (kind - ambient) / (kind - 45);
          near(amps ** 2, cell(row, String(kind)) ** 2 * room);
        }
      }
    }
  });
});
