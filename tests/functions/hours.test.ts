import quantile from "@stdlib/stats-base-dists-normal-quantile";
import fc from "fast-check";
import { erf, evaluate } from "mathjs";
import { describe, expect, it } from "vitest";
import { hoursAt } from "../../src/functions/hours/at";
import { hours } from "../../src/functions/hours/index";
import { hoursJoin } from "../../src/functions/hours/join";
import { hoursMean } from "../../src/functions/hours/mean";
import { priceMargin } from "../../src/functions/hours/price-margin";
import { priceMarkup } from "../../src/functions/hours/price-markup";
import { hoursSpread } from "../../src/functions/hours/spread";
import { refuses, refusesEveryBadArgument } from "./refusals";
import { agrees, byUnits, callByName } from "./second-calculation";

const rising = ({ low = 0, likely = 0, high = 0 }) => low <= likely && likely <= high;

describe("three-point estimates, against the units library", () => {
  const within = { low: [0, 400], likely: [400, 600], high: [600, 5000] } as const;

  it("HOURS.MEAN is a third of the ends' mean and two thirds of the likely value", () => {
    agrees(hoursMean, byUnits(hoursMean, "(low + high) / 2 / 3 + likely * 2 / 3"), { within, where: rising });
  });

  it("HOURS.SPREAD is a sixth of the range", () => {
    agrees(hoursSpread, byUnits(hoursSpread, "high / 6 - low / 6"), { within, where: rising });
  });
});

describe("HOURS.AT", () => {
  const z = (share: number) => callByName(hoursAt, { mean: 0, spread: 1, share });

  it("has the standard normal quantile to 1e-14 from 0.001 to 0.999, against a library of distributions", () => {
    for (let i = 1; i <= 999; i++) {
      const wanted = quantile(i / 1000, 0, 1);
      expect(Math.abs(z(i / 1000) - wanted), `share ${i / 1000}`).toBeLessThanOrEqual(1e-14);
    }
  });

  it("gives the share back through the error function", () => {
    for (let i = 1; i <= 999; i++) {
      const share = i / 1000;
      expect(Math.abs((1 + erf(z(share) / Math.SQRT2)) / 2 - share), `share ${share}`).toBeLessThanOrEqual(1e-14);
    }
  });

  it("does not jump where the middle meets the tails", () => {
    for (const edge of [0.075, 0.925]) {
      expect(Math.abs(z(edge + 1e-12) - z(edge - 1e-12))).toBeLessThan(2e-11);
    }
  });

  it("agrees with that library over random means, spreads and shares", () => {
    agrees(hoursAt, ({ mean = 0, spread = 0, share = 0.5 }) => (spread > 0 ? quantile(share, mean, spread) : mean), {
      scale: ({ mean = 0, spread = 0 }) => mean + spread,
    });
  });
});

describe("HOURS.JOIN", () => {
  it("agrees with the sum over every pair of lines, over random lines", () => {
    const lines = fc.array(fc.integer({ min: 0, max: 4000 }), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(lines, fc.integer({ min: 0, max: 1024 }), (numbers, part) => {
        const spreads = numbers.map((number) => number / 16);
        const common = part / 1024;
        // The quadratic form s' R s with ones on the diagonal and the correlation beside it.
        const matrix = spreads.map((_, i) => spreads.map((__, j) => (i === j ? 1 : common)));
        const wanted: number = evaluate("sqrt(s * R * s)", { s: spreads, R: matrix });
        const joined = callByName(hoursJoin, { spreads, common });
        expect(Math.abs(joined - wanted)).toBeLessThanOrEqual(1e-9 * wanted);
      }),
      { numRuns: 400, seed: 20 },
    );
  });

  it("takes 0.2 where nothing is said", () => {
    const spreads = [3, 4, 12];
    expect(callByName(hoursJoin, { spreads })).toBe(callByName(hoursJoin, { spreads, common: 0.2 }));
  });
});

describe("price", () => {
  it("PRICE.MARGIN agrees with one less cost over price", () => {
    agrees(priceMargin, byUnits(priceMargin, "1 - 1 / (1 + markup)"), { within: { markup: [0.001, 1000] } });
  });

  it("PRICE.MARKUP takes back what PRICE.MARGIN gave", () => {
    agrees(priceMarkup, ({ margin = 0 }) => 1 / (1 / margin - 1), { within: { margin: [0.001, 0.99] } });
    agrees(priceMargin, ({ markup = 0 }) => 1 / (1 / markup + 1), { within: { markup: [0.001, 99] } });
    for (const margin of [0, 0.2, 0.99]) {
      const markup = callByName(priceMarkup, { margin });
      expect(callByName(priceMargin, { markup })).toBeCloseTo(margin, 12);
    }
  });
});

describe("refusals", () => {
  // The two that want three rising numbers are tried below.
  const others = hours.filter((definition) => definition !== hoursMean && definition !== hoursSpread);

  it.each(others.map((definition) => [definition.name, definition] as const))(
    "%s names the argument",
    (_, definition) => {
      refusesEveryBadArgument(definition, definition.examples[0].given);
    },
  );

  it.each([hoursMean, hoursSpread])("$name wants three numbers that rise", (definition) => {
    const good = { low: 5, likely: 8, high: 17 };
    refuses(definition, { ...good, likely: 4 }, "range", "likely: 4 h does not lie between low 5 h and high 17 h");
    refuses(definition, { ...good, high: 7 }, "range", "likely: 8 h does not lie between low 5 h and high 7 h");
    refuses(definition, { ...good, low: -1 }, "range", "low: -1 h (allowed 0 to 1000000 h)");
    refuses(definition, { ...good, high: null }, "kind", "high: blank");
    refuses(definition, { ...good, likely: "x" }, "kind", 'likely: got text "x", needs a number');
    expect(callByName(definition, { low: 5, likely: 5, high: 5 })).toBe(definition === hoursMean ? 5 : 0);
  });

  it("HOURS.JOIN names the cell of its range", () => {
    refuses(hoursJoin, { spreads: [1, null, 3] }, "kind", "spreads: cell 2 of 3 is blank");
    refuses(hoursJoin, { spreads: [1, "b"] }, "kind", 'spreads: got text "b", needs a number');
    refuses(hoursJoin, { spreads: [1, -2] }, "range", "spreads: -2 h (allowed from 0 h)");
  });
});
