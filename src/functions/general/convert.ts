import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { nistSp811, openFormula } from "../../tables/unit-sources";

export const convert = defineFunction({
  name: "CONVERT",
  title: "The same quantity in another unit",
  args: {
    value: { unit: "any", about: "number in the first unit" },
    from: { kind: "text", about: "unit it is in" },
    to: { kind: "text", about: "unit it is wanted in" },
  },
  steps: [
    {
      kind: "convert",
      symbol: "converted",
      value: "value",
      from: "from",
      to: "to",
      unit: "any",
      why: "factors and zero points of the units library",
    },
  ],
  valid:
    "Unit symbols of OpenFormula, capital and small letters as there, and the unit texts of the rows. h is the hour, " +
    "not the horsepower; oz is a volume, ozm and lbm are masses, lbf and kgf are forces; a temperature is taken as a " +
    "reading, not as a difference.",
  sources: [openFormula, nistSp811],
  examples: [
    { given: { value: 1, from: "lbf", to: "N" }, expect: 4.448222, within: 5e-7, source: nistSp811 },
    { given: { value: 1, from: "kn", to: "m/s" }, expect: 0.5144444, within: 5e-8, source: nistSp811 },
    { given: { value: 1, from: "psi", to: "Pa" }, expect: 6894.757, within: 5e-4, source: nistSp811 },
    {
      given: { value: 212, from: "F", to: "C" },
      expect: 100,
      within: 1e-9,
      source: identity("(212 − 32)/1.8 = 100"),
    },
    {
      given: { value: 20, from: "mil", to: "mm" },
      expect: 0.508,
      within: 1e-12,
      source: identity("20·0.0254 = 0.508"),
    },
  ],
});
