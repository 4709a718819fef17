import { describe, expect, it } from "vitest";
import { gaugeOf, sizeOf } from "../../src/notebook/conductor-size";

describe("conductor sizes in gauges (areas by ASTM B258: 1/0 53.5, 2/0 67.4, 3/0 85.0, 4/0 107.2 mm2)", () => {
  it("never make a conductor look thicker: 50 mm2 is not 1/0, 70 mm2 is at least 2/0", () => {
    expect(gaugeOf(50)).toBe("1");
    expect(gaugeOf(70)).toBe("2/0");
    expect(gaugeOf(95)).toBe("3/0");
    expect(gaugeOf(120)).toBe("4/0");
    expect(gaugeOf(0.5)).toBeUndefined();
  });

  it("are held as the next IEC 60228 size that is at least as thick", () => {
    expect(sizeOf("1/0")).toBe(70);
    expect(sizeOf("2/0")).toBe(70);
    expect(sizeOf("2")).toBe(35);
    expect(sizeOf("4/0")).toBe(120);
    expect(sizeOf("70")).toBeUndefined();
  });
});
