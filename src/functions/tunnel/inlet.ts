import { defineFunction } from "../../formula/define";
import { entryLoss } from "../../tables/entry-loss";
import { crane } from "../../tables/hydraulics-sources";
import { diameter } from "./bore";

export const tunnelInlet = defineFunction({
  name: "TUNNEL.INLET",
  title: "Loss of a rounded inlet",
  args: {
    edgeRadius: { unit: "mm", about: "radius of the rounded edge", min: 0, max: 500 },
    diameter,
  },
  steps: [
    {
      kind: "algebra",
      symbol: "x",
      formula: "edgeRadius / diameter",
      unit: "1",
      why: "edge radius in diameters",
    },
    {
      kind: "between",
      symbol: "K",
      points: { table: entryLoss, column: "loss" },
      at: "x",
      beyond: "hold",
      unit: "1",
      why: "straight line between the published points; from 0.15 on the last one is held",
    },
  ],
  valid:
    "A flush inlet square to the wall, in velocity heads of the tube. Other handbooks differ by half either way; a tube that stands out of the skin loses more than a sharp flush one.",
  sources: [crane],
  examples: [
    { given: { edgeRadius: 0, diameter: 200 }, expect: 0.5, within: 1e-12, source: crane },
    { given: { edgeRadius: 8, diameter: 200 }, expect: 0.24, within: 1e-12, source: crane },
    { given: { edgeRadius: 20, diameter: 200 }, expect: 0.09, within: 1e-12, source: crane },
    { given: { edgeRadius: 40, diameter: 200 }, expect: 0.04, within: 1e-12, source: crane },
  ],
});
