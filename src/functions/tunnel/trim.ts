import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { around, diameter, entrance, flare } from "./bore";

export const tunnelTrim = defineFunction({
  name: "TUNNEL.TRIM",
  title: "Cut line of the tube's end against its mean",
  args: { diameter, entrance, flare, angle: around },
  steps: [
    { kind: "algebra", symbol: "R", formula: "diameter / 2", unit: "mm", why: "radius of the tube" },
    {
      kind: "algebra",
      symbol: "up",
      formula: "cos(radians(angle)) * tan(radians(flare))",
      unit: "1",
      why: "what the flare adds at the top",
    },
    {
      kind: "algebra",
      symbol: "ahead",
      formula: "sin(radians(angle)) * tan(radians(entrance))",
      unit: "1",
      why: "what the entrance takes off forward",
    },
    {
      kind: "algebra",
      symbol: "t",
      formula: "R * (up - ahead)",
      unit: "mm",
      why: "outboard of the mean line is above 0",
    },
  ],
  valid:
    "A flat skin; unrolled, the line is a pure cosine. Use the outer diameter for a template that is wrapped around the tube.",
  sources: [identity("A plane cut by a cylinder")],
  examples: [
    {
      given: { diameter: 185, entrance: 20, flare: 15, angle: 0 },
      expect: 24.785,
      within: 5e-4,
      source: identity("92.5·tan 15° = 24.785"),
    },
    {
      given: { diameter: 185, entrance: 20, flare: 15, angle: 120 },
      expect: -41.549,
      within: 5e-4,
      source: identity("92.5·(−0.5·0.267949 − 0.866025·0.363970) = −41.549"),
    },
  ],
});
