import { defineFunction } from "../../formula/define";
import { seawaterState } from "../../tables/weather-sources";

const coefficient = (value: number) =>
  ({ value, unit: "kg/m3", about: "EOS-80 coefficient", source: seawaterState }) as const;

export const waterDensity = defineFunction({
  name: "WATER.DENSITY",
  title: "Density of fresh, brackish and sea water",
  args: {
    temperature: { unit: "degC", about: "water temperature", min: -2, max: 40 },
    salinity: { unit: "g/kg", about: "practical salinity; 0 fresh, 35 ocean", min: 0, max: 42, otherwise: 35 },
  },
  constants: {
    ice: { value: 0, unit: "degC", about: "zero of the scale", source: seawaterState },
    kelvin: { value: 1, unit: "K", about: "the polynomials take plain numbers", source: seawaterState },
    gram: { value: 1, unit: "g/kg", about: "the polynomials take plain numbers", source: seawaterState },
    a0: coefficient(999.842594),
    a1: coefficient(6.793952e-2),
    a2: coefficient(-9.09529e-3),
    a3: coefficient(1.001685e-4),
    a4: coefficient(-1.120083e-6),
    a5: coefficient(6.536332e-9),
    b0: coefficient(0.824493),
    b1: coefficient(-4.0899e-3),
    b2: coefficient(7.6438e-5),
    b3: coefficient(-8.2467e-7),
    b4: coefficient(5.3875e-9),
    c0: coefficient(-5.72466e-3),
    c1: coefficient(1.0227e-4),
    c2: coefficient(-1.6546e-6),
    d0: coefficient(4.8314e-4),
  },
  steps: [
    { kind: "algebra", symbol: "t", formula: "(temperature - ice) / kelvin", unit: "1", why: "degrees as a number" },
    { kind: "algebra", symbol: "S", formula: "salinity / gram", unit: "1", why: "salinity as a number" },
    {
      kind: "algebra",
      symbol: "fresh",
      formula: "a0 + t * (a1 + t * (a2 + t * (a3 + t * (a4 + t * a5))))",
      unit: "kg/m3",
      why: "pure water",
    },
    {
      kind: "algebra",
      symbol: "first",
      formula: "b0 + t * (b1 + t * (b2 + t * (b3 + t * b4)))",
      unit: "kg/m3",
      why: "what goes with the salinity",
    },
    {
      kind: "algebra",
      symbol: "root",
      formula: "c0 + t * (c1 + t * c2)",
      unit: "kg/m3",
      why: "what goes with its power 3/2",
    },
    {
      kind: "algebra",
      symbol: "rho",
      formula: "fresh + S * first + S * sqrt(S) * root + S * S * d0",
      unit: "kg/m3",
      why: "density at one atmosphere",
    },
  ],
  valid:
    "At the surface; temperature on the scale of 1968, which differs from today's by 0.01 °C at 40 °C. 1025 is the usual round design value of the sea.",
  sources: [seawaterState],
  examples: [
    { given: { temperature: 5, salinity: 0 }, expect: 999.96675, within: 5e-6, source: seawaterState },
    { given: { temperature: 25, salinity: 0 }, expect: 997.04796, within: 5e-6, source: seawaterState },
    { given: { temperature: 5 }, expect: 1027.67547, within: 5e-6, source: seawaterState },
    { given: { temperature: 25 }, expect: 1023.34306, within: 5e-6, source: seawaterState },
  ],
});
