import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { gridBars } from "../../tables/grid-bars";
import { kirschmer, kirschmerBars } from "../../tables/hydraulics-sources";

export const tunnelGrid = defineFunction({
  name: "TUNNEL.GRID",
  title: "Loss of a grid of parallel bars at one end",
  args: {
    bar: { unit: "mm", about: "thickness of a bar across the flow", min: 0, max: 50 },
    gap: { unit: "mm", about: "clear gap between bars", min: 0, aboveMin: true, max: 500 },
    section: {
      kind: "text",
      about: "section of the bars",
      choices: ["square", "rounded front", "round", "rounded both ends", "streamlined"],
      otherwise: "round",
    },
    angle: { unit: "deg", about: "between the bars and the flow; 90 is square", min: 10, max: 90, otherwise: 90 },
  },
  steps: [
    {
      kind: "lookup",
      symbol: "beta",
      table: gridBars,
      key: "section",
      column: "factor",
      unit: "1",
      why: "bar factor, from memory",
    },
    {
      kind: "algebra",
      symbol: "K",
      formula: "beta * (bar / gap)^(4 / 3) * sin(radians(angle))",
      unit: "1",
      why: "in velocity heads of the flow that comes to the grid",
    },
  ],
  valid:
    "One grid: count both ends. Clean bars in line with the flow; weed and growth multiply the loss. TUNNEL.GRILL gives about twice as much for the same open share: take the two as a range.",
  sources: [kirschmer, kirschmerBars],
  examples: [
    {
      given: { bar: 3, gap: 17, section: "square" },
      expect: 0.2395,
      within: 5e-5,
      source: identity("2.42·(3/17)^(4/3) = 0.2395"),
    },
    {
      given: { bar: 4, gap: 36 },
      expect: 0.0956,
      within: 5e-5,
      source: identity("1.79·(4/36)^(4/3) = 0.0956"),
    },
  ],
});
