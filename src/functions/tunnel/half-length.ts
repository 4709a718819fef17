import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { around, diameter, entrance, flare, halfBreadth } from "./bore";

export const tunnelHalfLength = defineFunction({
  name: "TUNNEL.HALFLENGTH",
  title: "Length of the tube from the centreplane to the skin",
  args: { halfBreadth, diameter, entrance, flare, angle: around },
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
      symbol: "l",
      formula: "halfBreadth + R * (up - ahead)",
      unit: "mm",
      why: "the skin as a plane through the half-breadth on the axis",
    },
  ],
  valid:
    "A flat skin at the tunnel; with flare over about 45 degrees take offsets at top, axis and bottom instead (SHELL.BULGE shows by how much a side is not flat). Use the outer diameter for the hole. Below 0 the hole crosses the centreplane.",
  sources: [identity("A plane cut by a cylinder")],
  examples: [
    {
      given: { halfBreadth: 400, diameter: 185, entrance: 20, flare: 15, angle: 0 },
      expect: 424.7853,
      within: 5e-5,
      source: identity("400 + 92.5·tan 15° = 424.7853"),
    },
    {
      given: { halfBreadth: 400, diameter: 185, entrance: 20, flare: 15, angle: 90 },
      expect: 366.3328,
      within: 5e-5,
      source: identity("400 − 92.5·tan 20° = 366.3328"),
    },
    {
      given: { halfBreadth: 400, diameter: 185, entrance: 20, flare: 15, angle: 270 },
      expect: 433.6672,
      within: 5e-5,
      source: identity("400 + 92.5·tan 20° = 433.6672"),
    },
  ],
});
