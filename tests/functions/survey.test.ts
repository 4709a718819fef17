import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { surveyAlong } from "../../src/functions/survey/along";
import { surveyAway } from "../../src/functions/survey/away";
import { shellBulge } from "../../src/functions/survey/bulge";
import { shellRake } from "../../src/functions/survey/rake";
import { surveySkew } from "../../src/functions/survey/skew";
import { shellSlope } from "../../src/functions/survey/slope";
import { cutLine } from "./plane";
import { refuses, refusesEveryBadArgument } from "./refusals";
import { agrees, byUnits, callByName } from "./second-calculation";

const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((i) => i / 10);

describe("a point fixed by two tapes", () => {
  it("SURVEY.ALONG and SURVEY.AWAY find a point again from its distances to the marks", () => {
    fc.assert(
      fc.property(tenths(-3000, 5000), tenths(10, 4000), tenths(100, 3000), (along, away, base) => {
        const given = { fromFirst: Math.hypot(along, away), fromSecond: Math.hypot(base - along, away), base };
        const reach = Math.max(given.fromFirst, given.fromSecond, base);
        // The height is a small difference of large squares: its error grows by reach/base and reach/away.
        expect(Math.abs(callByName(surveyAlong, given) - along)).toBeLessThanOrEqual((1e-12 * reach ** 2) / base);
        expect(Math.abs(callByName(surveyAway, given) - away)).toBeLessThanOrEqual(
          (1e-12 * reach ** 3) / base / away + 1e-9,
        );
      }),
      { numRuns: 400, seed: 20 },
    );
  });

  it("SURVEY.AWAY agrees with Heron's area of the triangle", () => {
    fc.assert(
      fc.property(tenths(600, 1000), tenths(600, 1000), tenths(500, 900), (fromFirst, fromSecond, base) => {
        const half = (fromFirst + fromSecond + base) / 2;
        const area = Math.sqrt(half * (half - fromFirst) * (half - fromSecond) * (half - base));
        const away = callByName(surveyAway, { fromFirst, fromSecond, base });
        expect(Math.abs(away / ((2 * area) / base) - 1)).toBeLessThan(1e-9);
      }),
      { numRuns: 400, seed: 20 },
    );
  });

  it("SURVEY.ALONG agrees with the units library", () => {
    agrees(
      surveyAlong,
      byUnits(surveyAlong, "base / 2 + (fromFirst - fromSecond) * (fromFirst + fromSecond) / base / 2"),
      {
        within: { fromFirst: [0, 5000], fromSecond: [0, 5000], base: [100, 5000] },
        scale: ({ fromFirst = 0, fromSecond = 0, base = 1 }) => (fromFirst ** 2 + fromSecond ** 2) / base,
      },
    );
  });

  it("SURVEY.AWAY is 0 where the three points lie on one line", () => {
    expect(callByName(surveyAway, { fromFirst: 300.3, fromSecond: 600.6, base: 900.9 })).toBeCloseTo(0, 4);
    expect(callByName(surveyAway, { fromFirst: 1000, fromSecond: 400, base: 600 })).toBe(0);
  });

  it("SURVEY.AWAY refuses tapes that do not meet, on either side", () => {
    refuses(
      surveyAway,
      { fromFirst: 300, fromSecond: 400, base: 800 },
      "range",
      "from first 300 mm and from second 400 mm do not meet over a base of 800 mm; measure again",
    );
    refuses(surveyAway, { fromFirst: 1500, fromSecond: 400, base: 800 }, "range", /do not meet/);
    refuses(surveyAway, { fromFirst: 400, fromSecond: 1500, base: 800 }, "range", /do not meet/);
  });
});

describe("angles", () => {
  it("SURVEY.SKEW and SHELL.SLOPE agree with the units library", () => {
    const scale = () => 1e-6;
    agrees(surveySkew, byUnits(surveySkew, "atan2(difference / (1 mm), span / (1 mm)) * (180 / pi) deg"), { scale });
    agrees(shellSlope, byUnits(shellSlope, "atan2((first - second) / (1 mm), spacing / (1 mm)) * (180 / pi) deg"), {
      scale,
    });
  });

  it("SHELL.SLOPE reads the angles back that a tunnel was cut with", () => {
    const given = { halfBreadth: 500, diameter: 185, entrance: 24, flare: 17 };
    const at = (angle: number) => cutLine({ ...given, angle });
    expect(callByName(shellSlope, { first: at(270), second: at(90), spacing: 185 })).toBeCloseTo(24, 10);
    expect(callByName(shellSlope, { first: at(0), second: at(180), spacing: 185 })).toBeCloseTo(17, 10);
  });

  it("SHELL.RAKE agrees with where two waterlines of the plane meet the centreplane", () => {
    agrees(
      shellRake,
      ({ entrance = 0, flare = 0 }) => {
        const tangent = (degrees: number) => Math.tan((degrees * Math.PI) / 180);
        const stem = (z: number) => (1000 + z * tangent(flare)) / tangent(entrance);
        return (Math.atan2(stem(100) - stem(-100), 200) * 180) / Math.PI;
      },
      { within: { entrance: [0.5, 70] }, scale: () => 0.01 },
    );
  });
});

describe("SHELL.BULGE", () => {
  it("agrees with the units library", () => {
    agrees(shellBulge, byUnits(shellBulge, "((middle - first) - (last - middle)) / 2"), {
      scale: ({ first = 0, middle = 0, last = 0 }) => Math.abs(first) + Math.abs(middle) + Math.abs(last),
    });
  });

  it("is what the flat cut lines miss at top and bottom together, on a section of second degree", () => {
    const section = (z: number) => 500 + 0.9 * z - 0.002 * z * z;
    const bulge = callByName(shellBulge, { first: section(92.5), middle: section(0), last: section(-92.5) });
    const flat = (z: number) => 500 + 0.9 * z;
    expect(flat(92.5) - section(92.5)).toBeCloseTo(bulge, 9);
    expect(flat(-92.5) - section(-92.5)).toBeCloseTo(bulge, 9);
  });
});

describe("refusals", () => {
  it.each([
    [surveyAlong, { fromFirst: 500, fromSecond: 500, base: 800 }],
    [surveyAway, { fromFirst: 500, fromSecond: 500, base: 800 }],
    [surveySkew, { difference: 5, span: 1000 }],
    [shellSlope, { first: 500, second: 450, spacing: 185 }],
    [shellRake, { entrance: 20, flare: 15 }],
    [shellBulge, { first: 1, middle: 2, last: 3 }],
  ])("$0.name names the argument that is blank, text or outside its limits", (definition, good) => {
    refusesEveryBadArgument(definition, good);
  });
});
