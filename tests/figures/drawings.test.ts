import { describe, expect, it } from "vitest";
import { isDrawn } from "../../src/figures/figure";
import { cases } from "./cases";

// The drawings lie in snapshots/ as files that a browser opens; `npx vitest run tests/figures -u` draws them anew.
describe("drawings", () => {
  it.each(Object.entries(cases))("%s is drawn as reviewed", async (name, draw) => {
    const drawn = draw();
    const text = isDrawn(drawn) ? `${drawn.svg}\n` : `${drawn.sentence}\n`;
    await expect(text).toMatchFileSnapshot(`snapshots/${name}.${isDrawn(drawn) ? "svg" : "txt"}`);
  });
});
