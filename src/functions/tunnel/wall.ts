import { defineFunction } from "../../formula/define";
import { smallCraftRules } from "../../tables/hydraulics-sources";

export const tunnelWall = defineFunction({
  name: "TUNNEL.WALL",
  title: "Least wall of a fibre-reinforced tube",
  args: {
    shell: { unit: "mm", about: "hull laminate next to the tunnel", min: 0, aboveMin: true, max: 100 },
  },
  constants: {
    least: { value: 8, unit: "mm", about: "least wall whatever the shell", source: smallCraftRules },
    more: { value: 1.25, unit: "1", about: "shell and a quarter", source: smallCraftRules },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "t",
      formula: "max(least, more * shell)",
      unit: "mm",
      why: "the larger of the two",
    },
  ],
  valid:
    "Classed craft with a fibre-reinforced hull. For an unclassed boat it is a bar to hold the yard's own target against, not a law.",
  sources: [smallCraftRules],
  examples: [
    { given: { shell: 6 }, expect: 8, within: 5e-3, source: smallCraftRules },
    { given: { shell: 6.4 }, expect: 8, within: 5e-3, source: smallCraftRules },
    { given: { shell: 10 }, expect: 12.5, within: 5e-3, source: smallCraftRules },
  ],
});
