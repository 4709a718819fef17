import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { batteryAir as rule } from "../../tables/electrical-sources";
import { gasCaution } from "../conductor/cautions";

export const batteryAir = defineFunction({
  name: "BATTERY.AIR",
  title: "Air that a battery needs while it is charged",
  args: {
    cells: { unit: "1", about: "cells in series", whole: true, min: 1, max: 200 },
    gassing: { unit: "mA/Ah", about: "gassing current for each Ah", min: 0, aboveMin: true, max: 200 },
    capacity: { unit: "Ah", about: "of the string", min: 0, aboveMin: true, max: 100000 },
  },
  constants: {
    each: {
      value: 0.05,
      unit: "m3/Ah",
      about: "air for each cell and ampere: dilution 24, 0.00042 m3 of hydrogen for each Ah, safety 5",
      source: rule,
    },
    mAperA: { value: 1000, unit: "mA/A", about: "milliamperes in an ampere", source: identity("SI") },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "Igas",
      formula: "gassing * capacity / mAperA",
      unit: "A",
      why: "current that goes into gas",
    },
    { kind: "algebra", symbol: "Q", formula: "each * cells * Igas", unit: "m3/h", why: "air that keeps the gas thin" },
  ],
  valid:
    "Lead-acid, stationary rule: 1 mA/Ah for sealed batteries on float; 8 for sealed and 20 for vented on boost are from memory; a battery that is cycled gasses about ten times as much as on float. Strings side by side count with their whole capacity. Charging sets the need, the thruster's run does not.",
  caution: gasCaution,
  sources: [rule],
  examples: [
    {
      given: { cells: 12, gassing: 8, capacity: 200 },
      expect: 0.96,
      within: 1e-9,
      source: identity("0.05·12·8·200/1000"),
    },
    {
      given: { cells: 12, gassing: 1, capacity: 200 },
      expect: 0.12,
      within: 1e-9,
      source: identity("0.05·12·1·200/1000"),
    },
  ],
});
