import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { diameter } from "../tunnel/bore";
import { axis, between, grid, validGrid } from "./offsets";
import { wigley, wigleyAxis, wigleyGrid } from "./wigley";

export const hullHoleEdge = defineFunction({
  name: "HULL.HOLEEDGE",
  title: "Length of the hole's edge on a curved side",
  args: { ...grid, ...axis, diameter, between },
  steps: [
    {
      kind: "surface",
      symbol: "P",
      reading: "edge",
      unit: "mm",
      why: "length of the line in which tube and skin meet",
    },
  ],
  valid: `Use the outside diameter; compare with TUNNEL.HOLEEDGE. ${validGrid}`,
  sources: [identity("Where a cylinder meets a surface")],
  examples: [
    {
      given: { ...wigleyGrid, ...wigleyAxis, diameter: 185 },
      expect: 630.581,
      within: 5e-4,
      source: { ...wigley, clause: "the hull's formula, chords added up" },
    },
  ],
});
