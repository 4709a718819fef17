import { describe, expect, it } from "vitest";
import { shellBulge } from "../../src/functions/survey/bulge";
import { shellRake } from "../../src/functions/survey/rake";
import { shellSlope } from "../../src/functions/survey/slope";
import { callByName } from "../functions/second-calculation";
import { cell, rowsOf } from "./values";

describe("angles of the skin", () => {
  it.each(rowsOf("hole-geometry.csv").filter(({ entrance }) => entrance !== 0))(
    "SHELL.RAKE at entrance $entrance, flare $flare (two planes, own arithmetic, 4 decimals)",
    (row) => {
      const given = { entrance: cell(row, "entrance"), flare: cell(row, "flare") };
      expect(callByName(shellRake, given)).toBeCloseTo(cell(row, "stem_rake"), 4);
    },
  );

  it("SHELL.SLOPE finds 24.348 and 60.756 degrees from offsets of a closed-form yacht hull at x 1.8, z -0.30 m", () => {
    // Half-breadths in mm at x 1.7 and 1.9 m, then at z -0.2 and -0.4 m, printed to 0.1 mm.
    const entrance = callByName(shellSlope, { first: 546.4, second: 455.8, spacing: 200 });
    const flare = callByName(shellSlope, { first: 646.8, second: 285.6, spacing: 200 });
    // Rounding of the offsets moves the entrance by 0.02 degrees; the chord of so round a section is 0.3 off the flare.
    expect(Math.abs(entrance - 24.348)).toBeLessThan(0.03);
    expect(Math.abs(flare - 60.756)).toBeLessThan(0.35);
  });

  it("SHELL.BULGE tells the curved yacht hull's error of the flat cut lines to a fifth", () => {
    const rows = rowsOf("yacht-hull-tunnel.csv");
    expect(rows).toHaveLength(4);
    for (const row of rows) {
      const mm = (column: string) => 1000 * cell(row, column);
      const round = callByName(shellBulge, { first: mm("top"), middle: mm("half_breadth"), last: mm("bottom") });
      const level = callByName(shellBulge, { first: mm("fore"), middle: mm("half_breadth"), last: mm("aft") });
      expect(Math.abs(round / cell(row, "flat_error_mm") - 1)).toBeLessThan(0.2);
      // Fore and aft the side is all but flat: the text beside the table says within about 1 mm.
      expect(Math.abs(level)).toBeLessThan(round / 20);
    }
  });
});
