import { defineFunction } from "../../formula/define";
import { commonPractice, identity } from "../../formula/source";
import { diameter } from "./bore";

export const tunnelEdge = defineFunction({
  name: "TUNNEL.EDGE",
  title: "Edge radius at the ends of the tunnel",
  args: {
    diameter,
    share: { unit: "1", about: "edge radius as a share of the tunnel's radius", min: 0, max: 0.5, otherwise: 0.1 },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "r",
      formula: "share * diameter / 2",
      unit: "mm",
      why: "a share of the tunnel's radius",
    },
  ],
  valid:
    "The share is of the radius: 10 % of the radius is 5 % of the diameter. More rounding costs less thrust up to 30 % of the radius.",
  sources: [identity("A share of the radius"), commonPractice("edge radius of 10 % of the tunnel's radius")],
  examples: [
    { given: { diameter: 185 }, expect: 9.25, within: 1e-9, source: identity("0.10·185/2 = 9.25") },
    { given: { diameter: 200, share: 0.3 }, expect: 30, within: 1e-9, source: identity("0.30·200/2 = 30") },
  ],
});
