import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { mm3PerMl } from "../../tables/millilitre";
import { edge, radius } from "./ring";

const geometry = identity("Section of a fillet, averaged along the ellipse in which a plane cuts a cylinder");

export const filletVolume = defineFunction({
  name: "FILLET.VOLUME",
  title: "Filler in the fillet round the joint",
  args: {
    radius,
    edge,
    tilt: {
      unit: "deg",
      about: "skin's normal against the tunnel's axis; 0 where the tube meets it squarely",
      min: 0,
      max: 60,
    },
  },
  constants: { mm3PerMl },
  steps: [
    {
      kind: "algebra",
      symbol: "S",
      formula: "sin(radians(tilt))",
      unit: "1",
      why: "how far the corner opens and closes",
    },
    { kind: "algebra", symbol: "T", formula: "tan(radians(tilt))", unit: "1", why: "how far the edge is drawn out" },
    // Half a turn holds every angle once. At 60° 16 points are 5e-10 off, 20 points 4e-12 and 24 points 4e-14.
    {
      kind: "mean",
      symbol: "c",
      angle: "phi",
      from: "0",
      to: "pi",
      points: 24,
      term: "1 / tan(pi / 4 + asin(S * cos(phi)) / 2) - (pi / 4 - asin(S * cos(phi)) / 2)",
      weight: "sqrt(1 + T * T * sin(phi) * sin(phi))",
      unit: "1",
      why: "section over r², for the inside angle 90° + asin(sin tilt·cos φ), weighted by length of edge",
    },
    { kind: "algebra", symbol: "A", formula: "c * radius * radius", unit: "mm2", why: "mean section" },
    { kind: "algebra", symbol: "V", formula: "A * edge / mm3PerMl", unit: "ml", why: "section times edge" },
  ],
  valid:
    "A flat skin and a fillet small against the tube; for the way of its centre add 0.22 of its radius to that of " +
    "the tube. A 90° formula is a third short at 30° of tilt and three quarters at 45°.",
  sources: [geometry],
  examples: [
    {
      given: { radius: 10, edge: 1000, tilt: 0 },
      expect: 21.46,
      within: 5e-3,
      source: identity("(1 − π/4)·10²·1000 mm3 = 21.46 ml"),
    },
    {
      given: { radius: 10, edge: 10000, tilt: 30 },
      expect: 285,
      within: 0.2,
      source: identity("mean coefficient 0.2850 by adding up 2000 short pieces of edge"),
    },
    {
      given: { radius: 15, edge: 649.3705, tilt: 0 },
      expect: 31.36,
      within: 5e-3,
      source: identity("Pappus ring: 2π(100 + 0.22337·15)·0.21460·15² mm3 = 31.36 ml"),
    },
  ],
});
