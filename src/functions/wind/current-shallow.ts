import { defineFunction } from "../../formula/define";
import { mooringDesign } from "../../tables/weather-sources";

export const currentShallow = defineFunction({
  name: "CURRENT.SHALLOW",
  title: "Cross-flow drag over a shallow bottom",
  args: {
    deep: { unit: "1", about: "coefficient in deep water", min: 0.2, max: 3.2 },
    draught: { unit: "m", about: "draught", min: 0, aboveMin: true, max: 30 },
    depth: { unit: "m", about: "depth of the water", min: 0, aboveMin: true, max: 12000 },
    aground: {
      unit: "1",
      about: "coefficient with the keel on the bottom",
      min: 0.2,
      max: 4,
      otherwise: 3.2,
    },
    exponent: { unit: "1", about: "how fast the bottom is felt; 2 for most hulls", min: 1, max: 6, otherwise: 2 },
  },
  steps: [
    {
      kind: "require",
      holds: "draught <= depth",
      says: "draught: {draught} m is more than the depth {depth} m; the boat would be aground",
    },
    {
      kind: "algebra",
      symbol: "C",
      formula: "deep + (aground - deep) * (draught / depth)^exponent",
      unit: "1",
      why: "from deep water to a closed gap under the keel",
    },
  ],
  valid: "Beam current up to 1.5 m/s; made for ships at moorings, so for a yacht it shows the tendency.",
  sources: [mooringDesign],
  examples: [
    {
      // 0.630 MN of pressure on the profile makes the printed 1.30 MN of 2.0635..2.0714
      given: { deep: 0.851, draught: 0.72, depth: 1 },
      expect: 2.0635,
      within: 8e-3,
      source: {
        ...mooringDesign,
        note: "table 4-6 prints 1.30 MN at draught/depth 0.72; pressure times profile 0.630 MN and deep coefficient 0.851 were fitted to the table's five rows",
      },
    },
  ],
});
