import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { radius } from "./ring";

export const filletArea = defineFunction({
  name: "FILLET.AREA",
  title: "Section of a fillet",
  args: {
    radius,
    angle: { unit: "deg", about: "inside angle of the corner", min: 20, max: 170 },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "c",
      formula: "1 / tan(radians(angle) / 2) - (pi - radians(angle)) / 2",
      unit: "1",
      why: "kite between the corner and the two touching points, less the arc's sector",
    },
    { kind: "algebra", symbol: "A", formula: "radius * radius * c", unit: "mm2", why: "as the square of the radius" },
  ],
  valid:
    "A round hollow that touches both sides. Filler in the corner never counts as structure: the glass over it does.",
  sources: [identity("r²(cot(θ/2) − (π − θ)/2); at 90° (1 − π/4)r²")],
  examples: [
    { given: { radius: 10, angle: 90 }, expect: 21.46, within: 5e-3, source: identity("100·(1 − π/4) = 21.46") },
    {
      given: { radius: 1, angle: 60 },
      expect: 0.68485,
      within: 5e-6,
      source: identity("√3 − π/3 = 0.68485"),
    },
  ],
});
