import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { resinHardener } from "../../src/functions/joint/resin-hardener";
import { resinPortion } from "../../src/functions/joint/resin-portion";
import { resinPortions } from "../../src/functions/joint/resin-portions";
import { resinPotLife } from "../../src/functions/joint/resin-pot-life";
import { stockPacks } from "../../src/functions/joint/stock-packs";
import { agrees, byUnits, callByName } from "./second-calculation";

const whole = (min: number, max: number) => fc.integer({ min, max });

/** Rounding up of a quotient of whole numbers, without rounding errors. */
const roundedUp = (above: number, below: number): number =>
  Number((BigInt(above) + BigInt(below) - 1n) / BigInt(below));

describe("resin", () => {
  it("RESIN.POTLIFE agrees with exponential decay at ln 2 in 10 degrees", () => {
    agrees(
      resinPotLife,
      ({ minutes = 0, temperature = 25 }) => minutes * Math.exp((Math.LN2 * (25 - temperature)) / 10),
    );
  });

  it("RESIN.PORTION agrees with the units library below the cap, and is the cap above", () => {
    const free = byUnits(resinPortion, "rate * potlife * share");
    agrees(resinPortion, (given) => Math.min(free(given), given.cap ?? 0));
    agrees(resinPortion, free, { within: { cap: [20, 20], rate: [0, 0.1], potlife: [0, 100] } });
  });

  it("RESIN.HARDENER agrees with the units library", () => {
    agrees(resinHardener, byUnits(resinHardener, "mixed / (1 + resinParts / hardenerParts)"), {
      within: { hardenerParts: [0.1, 1000] },
    });
    expect(callByName(resinHardener, { mixed: 1, resinParts: 100, hardenerParts: 0 })).toBe(0);
  });

  it("RESIN.PORTIONS rounds grams up exactly", () => {
    fc.assert(
      fc.property(whole(0, 1_000_000), whole(1, 5000), (total, portion) => {
        const pots = callByName(resinPortions, { total: total / 1000, portion: portion / 1000 });
        expect(pots).toBe(roundedUp(total, portion));
      }),
      { numRuns: 1000, seed: 20 },
    );
  });
});

describe("stock", () => {
  it("STOCK.PACKS rounds whole quantities with a waste of whole hundredths up exactly", () => {
    fc.assert(
      fc.property(whole(0, 20_000), whole(0, 200), whole(1, 500), (net, waste, pack) => {
        const packs = callByName(stockPacks, { net, waste: waste / 100, pack });
        expect(packs).toBe(roundedUp(net * (100 + waste), 100 * pack));
      }),
      { numRuns: 1000, seed: 20 },
    );
  });
});
