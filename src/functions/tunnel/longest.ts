import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { entrance, flare } from "./bore";

export const tunnelLongest = defineFunction({
  name: "TUNNEL.LONGEST",
  title: "Where the tube is longest",
  args: { entrance, flare },
  constants: {
    aft: { value: 270, unit: "deg", about: "straight aft", source: identity("Definition") },
    bottom: { value: 180, unit: "deg", about: "at the bottom", source: identity("Definition") },
  },
  steps: [
    {
      kind: "algebra",
      symbol: "phi",
      formula:
        "entrance == 0 ? (flare < 0 ? bottom : 0) : aft + degrees(atan(tan(radians(flare)) / tan(radians(entrance))))",
      unit: "deg",
      why: "the long axis of the hole runs along (−tan(entrance), tan(flare)) in side view",
    },
  ],
  valid:
    "Counted as everywhere here: 0 top, 90 forward, 180 bottom, 270 aft; port and starboard are mirror images with the same angle. On a square end (both angles 0) any place is as long; 0 is given.",
  sources: [identity("Direction of the gradient of a plane")],
  examples: [
    {
      given: { entrance: 20, flare: 15 },
      expect: 306.3599,
      within: 5e-5,
      source: identity("270 + atan(tan 15°/tan 20°) = 270 + 36.3599"),
    },
    { given: { entrance: 20, flare: 0 }, expect: 270, within: 1e-9, source: identity("straight aft without flare") },
    { given: { entrance: 0, flare: 15 }, expect: 0, within: 0, source: identity("at the top without entrance") },
  ],
});
