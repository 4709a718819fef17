import { describe, expect, test } from "vitest";
import { convert } from "../../src/functions/general/convert";
import { callByName } from "../functions/second-calculation";
import { nistSp811 } from "./nist-sp811";

describe("NIST SP 811, Guide for the use of the SI, 2008, appendix B.8", () => {
  test.each(nistSp811)("CONVERT: one %s is so many %s: %d", (from, to, factor, within) => {
    const converted = callByName(convert, { value: 1, from, to });
    expect(Math.abs(converted - factor)).toBeLessThanOrEqual(within === "exact" ? factor * 4e-16 : within);
  });

  test("CONVERT: t/°C = (t/°F − 32)/1.8 and T/K = t/°C + 273.15", () => {
    for (const fahrenheit of [-40, 0, 32, 98.6, 212]) {
      const celsius = callByName(convert, { value: fahrenheit, from: "F", to: "C" });
      expect(Math.abs(celsius - (fahrenheit - 32) / 1.8)).toBeLessThan(1e-12);
      expect(callByName(convert, { value: celsius, from: "C", to: "K" })).toBeCloseTo(celsius + 273.15, 11);
    }
  });
});
