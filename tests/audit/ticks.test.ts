import { describe, expect, it } from "vitest";
import { accept, unaccept } from "../../src/audit/accept";
import { auditNotebook } from "../../src/audit/audit";
import { review, reviewOfCell, reviewsOf, unreview } from "../../src/audit/review";
import { setCells } from "../../src/notebook/edit-cells";
import { LiveNotebook } from "../../src/notebook/live";
import { storedSpread, storeSpread } from "../../src/study/stored";
import { at, sample } from "../notebook/sample";

const day = "2026-11-25";

describe("a review tick", () => {
  it("stands until a formula or an input of the cell changes, and stands again when that is taken back", () => {
    const notebook = review(sample(), "Supply.drop@Cruiser", "R. Iver", day);
    const spot = at(notebook, "Supply", "F7");
    expect(reviewOfCell(notebook, reviewsOf(notebook), spot)).toMatchObject({ who: "R. Iver", stale: false });
    const changed = setCells(notebook, [{ ...at(notebook, "Supply", "F3"), text: "311" }]);
    expect(reviewOfCell(changed, reviewsOf(changed), spot)?.stale).toBe(true);
    const other = setCells(notebook, [{ ...at(notebook, "Supply", "E3"), text: "241" }]);
    expect(reviewOfCell(other, reviewsOf(other), spot)?.stale).toBe(false);
    const back = setCells(changed, [{ ...at(notebook, "Supply", "F3"), text: "310" }]);
    expect(reviewOfCell(back, reviewsOf(back), spot)?.stale).toBe(false);
  });

  it("can be taken back, and needs a name and a place that is there", () => {
    const notebook = review(sample(), "Supply.drop@Cruiser", "R. Iver", day);
    expect(reviewsOf(unreview(notebook, "Supply.drop@Cruiser"))).toEqual([]);
    expect(() => review(sample(), "Supply.drop@Cruiser", " ", day)).toThrow("needs the name");
    expect(() => review(sample(), "Supply.nothing@Cruiser", "R. Iver", day)).toThrow(
      "There is no Supply.nothing@Cruiser",
    );
  });
});

describe("an accepted finding", () => {
  it("is kept in the notebook with its reason, counts no more, and can be opened again", () => {
    const live = new LiveNotebook(sample());
    const [finding] = auditNotebook(live).open;
    expect(finding).toBeDefined();
    if (!finding) return;
    const accepted = accept(live.notebook, [finding], "one boat only", "R. Iver", day);
    const before = auditNotebook(live).open.length;
    const after = auditNotebook(new LiveNotebook(accepted));
    expect(after.open.length).toBeLessThan(before);
    expect(auditNotebook(new LiveNotebook(unaccept(accepted, [finding]))).open.length).toBe(before);
    expect(() => accept(live.notebook, [finding], "", "R. Iver", day)).toThrow("with a reason");
  });
});

describe("a stored spread", () => {
  it("comes back from the notebook as it was stored", () => {
    const spread = { seed: 7, trials: 2000, common: 0.3, vary: { "Supply.run": "10,11.5,14" } };
    expect(storedSpread(storeSpread(sample(), spread))).toEqual(spread);
    expect(storedSpread(sample()).seed).toBe(1);
  });
});
