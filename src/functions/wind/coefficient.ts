import { defineFunction } from "../../formula/define";
import { blendermann } from "../../tables/weather-sources";
import { windLoads } from "../../tables/wind-loads";

const vessels = windLoads.rows.map(([vessel]) => String(vessel));

export const windCoefficient = defineFunction({
  name: "WIND.COEFFICIENT",
  title: "Published wind coefficient of a kind of vessel",
  args: {
    vessel: { kind: "text", about: "kind of vessel", choices: vessels, otherwise: "Speed boat" },
    part: {
      kind: "text",
      about: "side force, bow or stern force, or shape of the side force's curve",
      choices: ["side", "bow", "stern", "shape"],
      otherwise: "side",
    },
  },
  steps: [
    {
      kind: "lookup",
      symbol: "C",
      table: windLoads,
      key: "vessel",
      column: { by: "part", of: { side: "side", bow: "bow", stern: "stern", shape: "shape" } },
      unit: "1",
      why: "for WIND.PUSH and WIND.YAW",
    },
  ],
  valid:
    "Ships and a few small craft in a wind tunnel. A yacht's rig must be added as area; take the range 0.8 to 1.2 for the side force where a result hangs on it.",
  sources: [blendermann],
  examples: [
    { given: {}, expect: 0.9, within: 0, source: blendermann },
    { given: { vessel: "Tender" }, expect: 0.85, within: 0, source: blendermann },
    { given: { vessel: "Speed boat", part: "stern" }, expect: 0.6, within: 0, source: blendermann },
  ],
});
