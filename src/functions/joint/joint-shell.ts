import { defineFunction } from "../../formula/define";
import { smallCraftRules } from "../../tables/hydraulics-sources";

export const jointShell = defineFunction({
  name: "JOINT.SHELL",
  title: "Hull laminate at the tunnel",
  args: {
    shell: { unit: "mm", about: "hull laminate next to the tunnel", min: 0, aboveMin: true, max: 100 },
  },
  constants: {
    more: { value: 1.5, unit: "1", about: "half as thick again", source: smallCraftRules },
  },
  steps: [{ kind: "algebra", symbol: "t", formula: "more * shell", unit: "mm", why: "local increase by a half" }],
  valid:
    "Classed craft; for an unclassed boat a bar to hold the yard's own target against, not a law. The rule does not " +
    "say how the extra half is shared between the inside and the outside.",
  sources: [smallCraftRules],
  examples: [
    { given: { shell: 6 }, expect: 9, within: 5e-3, source: smallCraftRules },
    { given: { shell: 10 }, expect: 15, within: 5e-3, source: smallCraftRules },
  ],
});
