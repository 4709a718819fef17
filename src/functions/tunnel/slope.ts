import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { entrance, flare } from "./bore";

export const tunnelSlope = defineFunction({
  name: "TUNNEL.SLOPE",
  title: "Steepest slope of the skin against the tunnel's end",
  args: { entrance, flare },
  steps: [
    {
      kind: "algebra",
      symbol: "G",
      formula: "sqrt(tan(radians(entrance)) * tan(radians(entrance)) + tan(radians(flare)) * tan(radians(flare)))",
      unit: "1",
      why: "slope of the plane y = b − x tan(entrance) + z tan(flare)",
    },
  ],
  valid: "A flat skin at the tunnel. The angle between the tunnel's axis and the square to the skin is atan of this.",
  sources: [identity("Gradient of a plane")],
  examples: [
    {
      given: { entrance: 20, flare: 15 },
      expect: 0.452,
      within: 5e-5,
      source: identity("sqrt(0.36397² + 0.26795²) = 0.45196"),
    },
    { given: { entrance: 45, flare: 0 }, expect: 1, within: 1e-12, source: identity("tan 45° = 1") },
  ],
});
