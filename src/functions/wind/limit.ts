import { defineFunction } from "../../formula/define";
import { beaufort } from "../../tables/beaufort";
import { beaufortScale } from "../../tables/weather-sources";

export const windLimit = defineFunction({
  name: "WIND.LIMIT",
  title: "Upper limit of a Beaufort force",
  args: {
    force: { unit: "1", about: "Beaufort force", whole: true, min: 0, max: 11 },
  },
  steps: [
    {
      kind: "lookup",
      symbol: "V",
      table: beaufort,
      key: "force",
      column: "upper",
      unit: "m/s",
      why: "highest mean wind of that force",
    },
  ],
  valid: "Mean wind at 10 m in m/s. The knots of the scale were rounded on their own and differ at the edges.",
  sources: [beaufortScale],
  examples: [
    { given: { force: 4 }, expect: 7.9, within: 0, source: beaufortScale },
    { given: { force: 5 }, expect: 10.7, within: 0, source: beaufortScale },
    { given: { force: 6 }, expect: 13.8, within: 0, source: beaufortScale },
  ],
});
