import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { peukert } from "../../tables/electrical-sources";

export const batteryRuntime = defineFunction({
  name: "BATTERY.RUNTIME",
  title: "Hours that a battery gives a current",
  args: {
    capacity: { unit: "Ah", about: "at the rated time", min: 0, aboveMin: true, max: 100000 },
    rated: { unit: "h", about: "time that the capacity is stated for, often 20 h", min: 0, aboveMin: true, max: 200 },
    exponent: { unit: "1", about: "Peukert's exponent, lead-acid 1.1 to 1.35", min: 1, max: 1.5 },
    current: { unit: "A", about: "steady discharge", min: 0, aboveMin: true, max: 10000 },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "t",
      formula: "rated * (capacity / (current * rated)) ^ exponent",
      unit: "h",
      why: "at capacity/rated amperes the answer is the rated time",
    },
  ],
  valid:
    "A full battery at one steady current, down to about 5 min. Capacity without its rated time gives nonsense: 100 Ah at 20 h, exponent 1.2 and 5 A is 20 h, not the 14.5 h of the shortened form. For a thruster the voltage sags out of use before the ampere-hours are gone: hold the volts at the motor first.",
  sources: [peukert],
  examples: [
    { given: { capacity: 100, rated: 20, exponent: 1.2, current: 5 }, expect: 20, within: 1e-9, source: peukert },
    {
      given: { capacity: 100, rated: 20, exponent: 1.2, current: 200 },
      expect: 0.2391,
      within: 5e-5,
      source: identity("20·(100/4000)^1.2"),
    },
    {
      given: { capacity: 250, rated: 20, exponent: 1.3, current: 20 },
      expect: 10.856,
      within: 5e-4,
      source: identity("20·(250/400)^1.3"),
    },
  ],
});
