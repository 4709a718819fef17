import { defineFunction } from "../../formula/define";
import { beaufort } from "../../tables/beaufort";
import { beaufortScale } from "../../tables/weather-sources";

export const windForce = defineFunction({
  name: "WIND.FORCE",
  title: "Beaufort force of a wind",
  args: {
    speed: { unit: "m/s", about: "mean wind at 10 m", min: 0, max: 120 },
  },
  steps: [
    {
      kind: "first",
      symbol: "B",
      table: beaufort,
      from: "end",
      where: "lower <= speed",
      take: "force",
      none: "speed: below the lowest wind of the scale",
      unit: "1",
      why: "the highest force whose lower limit is reached",
    },
  ],
  valid:
    "Mean wind at 10 m in m/s. A speed between two printed limits counts as the lower force. The knots of the scale were rounded on their own: 21 kn is force 5 in knots and force 6 here.",
  sources: [beaufortScale],
  examples: [
    { given: { speed: 8 }, expect: 5, within: 0, source: beaufortScale },
    { given: { speed: 10.7 }, expect: 5, within: 0, source: beaufortScale },
    { given: { speed: 32.7 }, expect: 12, within: 0, source: beaufortScale },
    { given: { speed: 0.2 }, expect: 0, within: 0, source: beaufortScale },
  ],
});
