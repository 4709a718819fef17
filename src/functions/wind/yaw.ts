import { defineFunction } from "../../formula/define";
import { blendermann } from "../../tables/weather-sources";
import { airDensity, lateralArea, sideCoefficient, windSpeed } from "./weather";

export const windYaw = defineFunction({
  name: "WIND.YAW",
  title: "Yawing moment of the wind about midship",
  args: {
    area: lateralArea,
    length: { unit: "m", about: "length over all", min: 0, aboveMin: true, max: 500 },
    ahead: { unit: "m", about: "centroid of the lateral area ahead of midship", min: -250, max: 250 },
    angle: { unit: "deg", about: "wind from ahead 0, abeam 90, astern 180", min: 0, max: 180 },
    speed: windSpeed,
    side: sideCoefficient,
    end: {
      unit: "1",
      about: "fore-and-aft coefficient on the frontal area, of the end that the wind meets",
      min: 0,
      max: 2,
      otherwise: 0.55,
    },
    shape: { unit: "1", about: "shape of the side force's curve", min: 0, max: 1, otherwise: 0.6 },
    frontalShare: { unit: "1", about: "frontal area over lateral area", min: 0, max: 2, otherwise: 0.35 },
    density: airDensity,
  },
  constants: {
    swing: { value: 0.18, unit: "1", about: "how the force's point moves with the angle", source: blendermann },
  },
  steps: [
    { kind: "algebra", symbol: "gamma", formula: "radians(angle)", unit: "1", why: "wind from ahead, in radians" },
    {
      kind: "algebra",
      symbol: "CDl",
      formula: "end * frontalShare",
      unit: "1",
      why: "fore-and-aft coefficient, carried to the lateral area",
    },
    {
      kind: "algebra",
      symbol: "CY",
      formula: "side * sin(gamma) / (1 - shape / 2 * (1 - CDl / side) * sin(2 * gamma) * sin(2 * gamma))",
      unit: "1",
      why: "side force at that angle",
    },
    {
      kind: "algebra",
      symbol: "CN",
      formula: "(ahead / length - swing * (gamma - pi / 2)) * CY",
      unit: "1",
      why: "its arm in shares of the length",
    },
    {
      kind: "algebra",
      symbol: "N",
      formula: "density / 2 * speed * speed * CN * area * length",
      unit: "N m",
      why: "above 0 the bow is pushed away from the wind",
    },
  ],
  valid:
    "Ships and a few small craft. The default end coefficient is that of a bow; with the wind abaft the beam give that of the stern (WIND.COEFFICIENT). The largest moment comes near 40 degrees off the bow: try several angles. Divide by the arm from thruster to the hull's centre of lateral resistance for the thrust that holds the heading adrift.",
  sources: [blendermann],
  examples: [
    {
      // 24 m2, 12 m, 20 kn: pressure 64.84 Pa, CN 0.11773
      given: { area: 24, length: 12, ahead: 0, angle: 45, speed: (20 * 1852) / 3600 },
      expect: 2198.5,
      within: 0.6,
      source: { ...blendermann, note: "speed boat at 45 degrees CN 0.1177; 64.84·0.11773·24·12 = 2198.4" },
    },
    {
      given: { area: 24, length: 12, ahead: 0, angle: 90, speed: 10 },
      expect: 0,
      within: 1e-9,
      source: { ...blendermann, note: "no moment of a beam wind at midship" },
    },
  ],
});
