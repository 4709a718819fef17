import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { copperHeat, iec60028 } from "../../tables/electrical-sources";
import { heatCaution } from "./cautions";
import { alpha, heatCapacity, meltingPoint, referenceTemperature, resistivity } from "./copper";

const checked = (arithmetic: string) => identity(`C·dT/dt = I²·r·(1 + α(T - 20)) - (T - ambient)/Rth: ${arithmetic}`);

export const conductorWarm = defineFunction({
  name: "CONDUCTOR.WARM",
  title: "Temperature of a conductor after a run",
  args: {
    area: { unit: "mm2", about: "true cross-section, of a gauge by AWG.AREA", min: 0, aboveMin: true, max: 1000 },
    current: { unit: "A", about: "in this conductor", min: 0, max: 10000 },
    seconds: { unit: "s", about: "length of the run", min: 0, max: 1e9 },
    ambient: { unit: "degC", about: "air around the conductor", min: -40, max: 100 },
    start: { unit: "degC", about: "conductor at the start of the run", min: -40, max: 250 },
    carry: { unit: "A", about: "its continuous carrying current", min: 0, aboveMin: true, max: 10000 },
    rated: {
      unit: "degC",
      about: "temperature that belongs to the carrying current",
      min: 40,
      max: 250,
      otherwise: 105,
    },
    base: { unit: "degC", about: "ambient that belongs to the carrying current", min: -20, max: 100, otherwise: 30 },
  },
  constants: { rho: resistivity, alpha, T20: referenceTemperature, heat: heatCapacity, melting: meltingPoint },
  steps: [
    {
      kind: "require",
      holds: "rated > base",
      says: "rated: {rated} °C is not above the base ambient of {base} °C, give the pair that the carrying current belongs to",
    },
    { kind: "algebra", symbol: "r", formula: "rho / area", unit: "ohm/m", why: "a metre of it at 20 °C" },
    {
      kind: "algebra",
      symbol: "Rth",
      formula: "(rated - base) / (carry * carry * r * (1 + alpha * (rated - T20)))",
      unit: "K m/W",
      why: "the carrying current, held for ever, ends at its rated temperature",
    },
    { kind: "algebra", symbol: "C", formula: "heat * area", unit: "J/(m K)", why: "the copper alone takes up heat" },
    {
      kind: "algebra",
      symbol: "q",
      formula: "current * current * r * (1 + alpha * (ambient - T20))",
      unit: "W/m",
      why: "heat made at ambient temperature",
    },
    {
      kind: "algebra",
      symbol: "b",
      formula: "1 / Rth - current * current * r * alpha",
      unit: "W/(m K)",
      why: "heat that leaves less heat that is added, for each kelvin above ambient; below 0 it runs away",
    },
    { kind: "algebra", symbol: "u", formula: "b * seconds / C", unit: "1", why: "time in time constants" },
    {
      kind: "algebra",
      symbol: "phi",
      formula: "abs(u) < 0.01 ? 1 - u / 2 * (1 - u / 3 * (1 - u / 4 * (1 - u / 5))) : (1 - exp(-u)) / u",
      unit: "1",
      why: "mean of exp(-u) over the run; its series where u is small, so that u = 0 has its limit 1",
    },
    {
      kind: "algebra",
      symbol: "rise",
      formula: "(start - ambient) * exp(-u) + q * seconds / C * phi",
      unit: "K",
      why: "what is left of the start, and what the run adds",
    },
    {
      kind: "require",
      holds: "ambient + rise <= melting",
      says: "current: {current} A for {seconds} s would take the copper past its melting point ({melting} °C); take a larger conductor or a shorter run",
    },
    { kind: "algebra", symbol: "T", formula: "ambient + rise", unit: "degC", why: "above ambient" },
  ],
  valid:
    "One leg of a run, for minutes: only copper stores heat, which errs on the hot side, and heat leaves as the carrying current implies, so that current for ever ends at the rated temperature; exact also where heating runs away. Start a second run from the end of the first; terminals and fuse holders warm faster than the cable. Refused past copper's melting point; insulation is gone long before.",
  caution: heatCaution,
  sources: [iec60028, copperHeat, identity("heat balance of a conductor, solved in closed form")],
  examples: [
    {
      given: { area: 53.475, current: 285, seconds: 1e9, ambient: 30, start: 30, carry: 285 },
      expect: 105,
      within: 1e-9,
      source: checked("at the carrying current the balance stands at the rated temperature"),
    },
    {
      given: { area: 53.475, current: 300, seconds: 180, ambient: 30, start: 30, carry: 285 },
      expect: 54.91,
      within: 5e-3,
      source: checked("1/0 AWG at 300 A for 180 s, the same by fourth-order steps in time"),
    },
    {
      given: { area: 107.219, current: 600, seconds: 300, ambient: 30, start: 30, carry: 445 },
      expect: 72.66,
      within: 5e-3,
      source: checked("4/0 AWG at 600 A for 300 s, the same by fourth-order steps in time"),
    },
  ],
});
