import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { colebrook, ittcWater, moodyRange } from "../../tables/hydraulics-sources";
import { mmPerM } from "../../tables/metre";
import { diameter } from "./bore";

const solved = identity("Colebrook's equation solved by bisection: 1e6 smooth f = 0.0116450");

export const tunnelFriction = defineFunction({
  name: "TUNNEL.FRICTION",
  title: "Friction loss along the tunnel",
  args: {
    length: { unit: "mm", about: "length of the tube", min: 0, max: 20000 },
    diameter,
    speed: { unit: "m/s", about: "speed of the water in the tube", min: 0, aboveMin: true, max: 30 },
    roughness: { unit: "mm", about: "height of the roughness; 0 is smooth", min: 0, max: 50, otherwise: 0 },
    viscosity: {
      unit: "m2/s",
      about: "kinematic viscosity; the default is the sea at 15 °C",
      min: 1e-7,
      max: 1e-5,
      otherwise: 1.1892e-6,
    },
  },
  constants: {
    mmPerM,
    turbulent: { value: 4000, unit: "1", about: "least Reynolds number of the equation's range", source: colebrook },
    roughest: { value: 0.05, unit: "1", about: "largest roughness in diameters", source: moodyRange },
    rough: { value: 3.7, unit: "1", about: "Colebrook's rough wall", source: colebrook },
    smooth: { value: 2.51, unit: "1", about: "Colebrook's smooth wall", source: colebrook },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "Re",
      formula: "speed * (diameter / mmPerM) / viscosity",
      unit: "1",
      why: "Reynolds number",
    },
    {
      kind: "require",
      holds: "Re >= turbulent",
      says: "speed: {speed} m/s gives a Reynolds number of {Re}, below {turbulent}; a faster flow or a larger diameter is needed",
    },
    {
      kind: "algebra",
      symbol: "c",
      formula: "roughness / diameter",
      unit: "1",
      why: "roughness in diameters",
    },
    {
      kind: "require",
      holds: "c <= roughest",
      says: "roughness: {roughness} mm is more than 1/20 of the diameter {diameter} mm",
    },
    // Newton's rule on x + 2 log10(c/3.7 + 2.51 x/Re) = 0, x = 1/sqrt(f). From 5 it agrees with bisection to the
    // last bit after 4 steps over Re 4000..1.6e8 and c 0..0.05; two more are kept in hand.
    {
      kind: "root",
      symbol: "x",
      start: "5",
      next: "x - (x + 2 * log10(c / rough + smooth * x / Re)) / (1 + 2 * smooth / Re / (ln(10) * (c / rough + smooth * x / Re)))",
      times: 6,
      unit: "1",
      why: "Colebrook's equation for 1/sqrt(f), by Newton's rule",
    },
    {
      kind: "algebra",
      symbol: "f",
      formula: "1 / (x * x)",
      unit: "1",
      why: "friction factor",
    },
    {
      kind: "algebra",
      symbol: "K",
      formula: "f * length / diameter",
      unit: "1",
      why: "in velocity heads of the tube",
    },
  ],
  valid:
    "Fully developed pipe flow; in a tunnel of a few diameters the flow is not, so take it as a low estimate of a small term. A Reynolds number below 4000 is refused.",
  sources: [colebrook, ittcWater],
  examples: [
    {
      // Re = 1000000: 11.892 m/s · 0.1 m / 1.1892e-6 m2/s
      given: { length: 100, diameter: 100, speed: 11.892 },
      expect: 0.011645,
      within: 5e-8,
      source: solved,
    },
    {
      given: { length: 100, diameter: 100, speed: 11.892, roughness: 0.01 },
      expect: 0.0134414,
      within: 5e-8,
      source: identity("Colebrook's equation solved by bisection: 1e6, 1e-4 f = 0.0134414; a Moody chart reads 0.0134"),
    },
  ],
});
