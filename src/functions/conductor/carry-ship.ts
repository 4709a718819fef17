import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { absShipCable } from "../../tables/electrical-sources";
import { shipCableCurrent } from "../../tables/ship-cable";
import { heatCaution } from "./cautions";

export const conductorCarryShip = defineFunction({
  name: "CONDUCTOR.CARRYSHIP",
  title: "Current that a ship cable may carry, by metric size",
  args: {
    area: { unit: "mm2", about: "nominal size", min: 25, max: 300 },
    class: { unit: "degC", about: "insulation class", oneOf: [60, 75, 85, 95], otherwise: 85 },
    ambient: { unit: "degC", about: "air around the cable", min: 20, max: 90, otherwise: 45 },
  },
  constants: {
    base: { value: 45, unit: "degC", about: "ambient of the table", source: absShipCable },
    gap: { value: 5, unit: "K", about: "least room below the class", source: identity("limit of this function") },
  },
  steps: [
    {
      kind: "require",
      holds: "class - ambient >= gap",
      says: "ambient: {ambient} °C is too near the insulation's {class} °C (allowed 20 °C to {gap} below the class)",
    },
    {
      kind: "lookup",
      symbol: "amps",
      table: shipCableCurrent,
      key: "area",
      column: { by: "class", of: { "60": "60", "75": "75", "85": "85", "95": "95" } },
      unit: "A",
      why: "single core in 45 °C",
    },
    {
      kind: "algebra",
      symbol: "I",
      formula: "amps * sqrt((class - ambient) / (class - base))",
      unit: "A",
      why: "heat that can leave grows with the room between class and ambient",
    },
  ],
  valid:
    "Single core, continuous, the table for 45 °C brought to another ambient by the square root of the temperature room. Stands 3 to 15 % below the currents that 33 CFR 183.425 allows at like size. Give an engine space its own ambient, about 50 °C. The 60 °C value of 50 mm2 is as printed, below the line of its column.",
  caution: heatCaution,
  sources: [absShipCable],
  examples: [
    { given: { area: 50 }, expect: 184, within: 0, source: absShipCable },
    { given: { area: 120, class: 75 }, expect: 269, within: 0, source: absShipCable },
    {
      given: { area: 70, ambient: 30 },
      expect: 267.3537,
      within: 5e-5,
      source: identity("228·√(55/40)"),
    },
  ],
});
