import { defineFunction } from "../../formula/define";
import { commonPractice, identity } from "../../formula/source";
import { diameter, entrance } from "./bore";

export const tunnelRecess = defineFunction({
  name: "TUNNEL.RECESS",
  title: "Length of the recess behind the tunnel",
  args: {
    diameter,
    entrance: { ...entrance, aboveMin: true },
    added: { unit: "deg", about: "floor of the recess against the skin", min: 1, max: 45 },
  },
  constants: {
    square: { value: 90, unit: "deg", about: "a right angle", source: identity("Definition") },
  },
  steps: [
    {
      kind: "require",
      holds: "entrance + added < square",
      says: "added: {added} deg on an entrance of {entrance} deg makes 90 deg or more, where the recess has no end",
    },
    {
      kind: "algebra",
      symbol: "w",
      formula: "diameter * tan(radians(entrance))",
      unit: "mm",
      why: "the strip that must go inboard of the skin",
    },
    {
      kind: "algebra",
      symbol: "L",
      formula: "w / (tan(radians(entrance + added)) - tan(radians(entrance)))",
      unit: "mm",
      why: "where the floor of the recess meets the skin again, fore and aft",
    },
  ],
  valid: "A flat skin, measured fore and aft from the aft edge. An added angle of 10 to 15 degrees is common practice.",
  sources: [
    identity("Two straight lines in the waterplane"),
    commonPractice("floor of the recess 10 to 15 degrees off the skin"),
  ],
  examples: [
    {
      given: { diameter: 185, entrance: 20, added: 10 },
      expect: 315.6,
      within: 0.05,
      source: identity("67.334/(tan 30° − tan 20°) = 315.6"),
    },
    {
      given: { diameter: 250, entrance: 15, added: 15 },
      expect: 216.5,
      within: 0.05,
      source: identity("66.987/(tan 30° − tan 15°) = 216.5"),
    },
  ],
});
