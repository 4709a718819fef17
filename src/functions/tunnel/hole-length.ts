import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { diameter, entrance, flare } from "./bore";

export const tunnelHoleLength = defineFunction({
  name: "TUNNEL.HOLELENGTH",
  title: "Long axis of the hole in the skin",
  args: { diameter, entrance, flare },
  steps: [
    {
      kind: "algebra",
      symbol: "G",
      formula: "sqrt(tan(radians(entrance)) * tan(radians(entrance)) + tan(radians(flare)) * tan(radians(flare)))",
      unit: "1",
      why: "steepest slope of the skin against the tunnel's end",
    },
    {
      kind: "algebra",
      symbol: "d",
      formula: "diameter * sqrt(1 + G * G)",
      unit: "mm",
      why: "an ellipse; its short axis is the tube's diameter",
    },
  ],
  valid: "Measured on a flat skin, with the outer diameter of the tube. The short axis is the diameter itself.",
  caution:
    "Before the skin is opened the boat must stand ashore and shored; grinding dust of glass and resin calls for a mask, gloves and extraction. Local codes and licensed practice decide.",
  sources: [identity("A cylinder cut by a plane")],
  examples: [
    {
      given: { diameter: 185, entrance: 20, flare: 15 },
      expect: 203.0176,
      within: 1e-4,
      source: identity("185·sqrt(1 + 0.204271) = 203.0176"),
    },
    {
      given: { diameter: 200, entrance: 60, flare: 0 },
      expect: 400,
      within: 1e-9,
      source: identity("200/cos 60° = 400"),
    },
  ],
});
