import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { customary, moreDecimals, shownUnit, toHeld, toShown } from "../../src/units/shown";

describe("shown units", () => {
  it("change numbers by the exact definitions (NIST SP 811, appendix B)", () => {
    expect(toShown(25.4, "mm", customary)).toBeCloseTo(1, 14);
    expect(toShown(0.3048, "m", customary)).toBeCloseTo(1, 14);
    expect(toShown(4.4482216152605, "N", customary)).toBeCloseTo(1, 14);
    expect(toShown(9.80665, "N", { N: "kgf" })).toBeCloseTo(1, 14);
    expect(toShown(0.45359237, "kg", customary)).toBeCloseTo(1, 14);
    expect(toShown(100, "degC", customary)).toBeCloseTo(212, 12);
    expect(toHeld(7.25, "mm", customary)).toBe(184.15);
  });

  it("leave what was not chosen, and every other unit, as it is held", () => {
    expect(shownUnit("mm", {})).toBe("mm");
    expect(shownUnit("ohm/km", customary)).toBe("ohm/km");
    expect(toShown(5, "V", customary)).toBe(5);
    expect(toHeld(5, "kg/m2", customary)).toBe(5);
  });

  it("give back what was typed, read through the screen again", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("mm", "m", "N", "kg", "degC"),
        fc.integer({ min: -40_000, max: 4_000_000 }),
        (held, n) => {
          const typed = n / 1000;
          const again = toShown(toHeld(typed, held, customary), held, customary);
          expect(Math.abs(again - typed)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(typed)));
        },
      ),
    );
  });

  it("ask for as many digits as keep the held unit's steps apart", () => {
    expect(moreDecimals("mm", customary)).toBe(2);
    expect(moreDecimals("m", customary)).toBe(0);
    expect(moreDecimals("N", customary)).toBe(1);
    expect(moreDecimals("mm", {})).toBe(0);
  });
});
