import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { thickness } from "./ring";

export const plyCount = defineFunction({
  name: "PLY.COUNT",
  title: "Plies that make up a thickness",
  args: {
    thickness: { ...thickness, about: "thickness to be reached" },
    each: { unit: "mm", about: "thickness of one ply", min: 0, aboveMin: true, max: 50 },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "n",
      formula: "ceil(thickness / each - 1e-9)",
      unit: "1",
      why: "rounded up; a billionth is taken off so that three plies of a third are three",
    },
  ],
  valid: "Plies of one kind. Mixed stacks are added up ply by ply.",
  sources: [identity("Rounding up to whole plies")],
  examples: [
    {
      given: { thickness: 6, each: 0.7344 },
      expect: 9,
      within: 0,
      source: identity("6/0.7344 = 8.17, up to 9"),
    },
    { given: { thickness: 1, each: 1 / 3 }, expect: 3, within: 0, source: identity("1/(1/3) = 3") },
  ],
});
