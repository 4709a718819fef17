import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { seaDensity } from "../tunnel/bore";
import { thrust } from "./propeller";

const strips = identity("Cross-flow drag of strips that turn about midship: ½ρ·C·T·r²·L⁴/32");

export const thrustTurn = defineFunction({
  name: "THRUST.TURN",
  title: "Steady rate of turn on the spot",
  args: {
    thrust,
    arm: { unit: "m", about: "thruster ahead of midship", min: 0, max: 250 },
    length: { unit: "m", about: "waterline length", min: 0, aboveMin: true, max: 500 },
    draught: { unit: "m", about: "mean draught of the hull body", min: 0, aboveMin: true, max: 30 },
    coefficient: { unit: "1", about: "cross-flow drag, from CURRENT.COEFFICIENT", min: 0.2, max: 4 },
    density: seaDensity,
  },
  constants: {
    radian: { value: 180 / Math.PI, unit: "deg", about: "degrees in a radian", source: identity("Definition") },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "r",
      formula: "sqrt(64 * thrust * arm / (density * coefficient * draught * length * length * length * length))",
      unit: "1/s",
      why: "thrust times arm equals the drag of all strips; the integral of |x|³ over the length is L⁴/32",
    },
    { kind: "algebra", symbol: "rate", formula: "r * radian", unit: "deg/s", why: "in degrees" },
  ],
  valid:
    "Steady turn in still air without headway, about midship; a boat that floats free turns about a point farther aft (THRUST.PIVOT) and 10 to 12 % slower. Keel and skeg are not in it.",
  sources: [strips],
  examples: [
    {
      given: { thrust: 600, arm: 4.8, length: 12, draught: 0.8, coefficient: 0.65 },
      expect: 7.399,
      within: 5e-4,
      source: identity("sqrt(64·600·4.8/(1025·0.65·0.8·12⁴)) = 0.12914 rad/s"),
    },
    {
      given: { thrust: 300, arm: 3.2, length: 8, draught: 0.5, coefficient: 0.7 },
      expect: 11.716,
      within: 5e-4,
      source: identity("sqrt(64·300·3.2/(1025·0.7·0.5·8⁴)) = 0.20448 rad/s"),
    },
  ],
});
