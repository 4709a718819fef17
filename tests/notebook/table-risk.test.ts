import { describe, expect, it } from "vitest";
import { tableRisk } from "../../src/notebook/table-risk";

const head = ["Quantity", "Key", "Unit", "Basis", "One"];
const page = [head, ["Length", "length", "m", "", "2"], ["Area", "area", "m2", "", "=E2^2"]];

describe("a table that comes in place of a page", () => {
  it("counts formulas that would come as texts", () => {
    const asTexts = [head, page[1] ?? [], ["Area", "area", "m2", "", "'=E2^2"]];
    expect(tableRisk(page, asTexts, true)).toEqual({ texts: 1 });
    expect(tableRisk(page, page, true)).toEqual({ texts: 0 });
  });

  it("names the first keyed row that would stand elsewhere", () => {
    const longer = [head, ["New", "new", "m", "", "1"], ...page.slice(1)];
    expect(tableRisk(page, longer, true)).toEqual({ texts: 0, moved: { key: "length", from: 2, to: 3 } });
    expect(tableRisk(page, [...page, ["New", "new", "m", "", "1"]], true)).toEqual({ texts: 0 });
    expect(tableRisk(page, longer, false)).toEqual({ texts: 0 });
  });

  it("has nothing to say of a page that does not calculate", () => {
    const plain = page.slice(0, 2);
    expect(tableRisk(plain, [head, ["New", "new", "m", "", "'=1"], ...plain.slice(1)], true)).toEqual({ texts: 0 });
  });
});
