import { defineFunction } from "../../formula/define";
import { commonPractice, identity } from "../../formula/source";

export const motorLean = defineFunction({
  name: "MOTOR.LEAN",
  title: "Least lean that gets the motor under the headroom",
  args: {
    height: { unit: "mm", about: "from the tunnel's axis to the motor's top", min: 0, aboveMin: true, max: 5000 },
    radius: { unit: "mm", about: "half the width of the motor's top in the plane it leans in", min: 0, max: 2000 },
    headroom: { unit: "mm", about: "from the tunnel's axis up to what is in the way", min: 0, max: 5000 },
  },
  steps: [
    {
      kind: "require",
      holds: "height <= headroom or radius <= headroom",
      says: "headroom: {headroom} mm is less than the motor's radius {radius} mm; it does not fit even lying flat",
    },
    {
      kind: "algebra",
      symbol: "s",
      formula: "sqrt(height * height + radius * radius)",
      unit: "mm",
      why: "from the axis to the upper corner of the motor",
    },
    {
      kind: "algebra",
      symbol: "theta",
      formula: "height <= headroom ? 0 : degrees(atan(radius / height) + acos(headroom / s))",
      unit: "deg",
      why: "the corner first rises, then comes down to the headroom: height·cos θ + radius·sin θ = headroom",
    },
  ],
  valid:
    "A motor that leans about the tunnel's axis; the room for its foot and for taking it out again is not in it. Above 30 degrees the motor needs a support of its own.",
  caution:
    "A leaning motor hangs its weight on the tunnel and its joint: support it while fitting and in service. The equipment builder's limit and local codes and licensed practice decide.",
  sources: [
    identity("Height of a rectangle's corner that turns about its foot"),
    commonPractice("support for a motor that leans more than 30 degrees"),
  ],
  examples: [
    {
      given: { height: 400, radius: 90, headroom: 450 },
      expect: 0,
      within: 0,
      source: identity("400 is not above 450: upright"),
    },
    {
      given: { height: 400, radius: 300, headroom: 300 },
      expect: 90,
      within: 1e-9,
      source: identity("atan(3/4) + acos(3/5) = 90°: lying flat"),
    },
    {
      given: { height: 410, radius: 205, headroom: 290 },
      expect: 77.3196,
      within: 5e-5,
      source: identity("410·9/41 + 205·40/41 = 290 at cos θ = 9/41, θ = 77.3196°"),
    },
    {
      given: { height: 500, radius: 0, headroom: 250 },
      expect: 60,
      within: 1e-9,
      source: identity("acos(250/500) = 60°"),
    },
  ],
});
