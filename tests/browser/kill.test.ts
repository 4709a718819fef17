import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { seeded } from "../formula/random-expression";
import { killRuns, type Outcome } from "./killed";
import { type ServedPage, servePage } from "./serve-page";

let served: ServedPage;
let profile: string;
beforeAll(async () => {
  served = await servePage();
  profile = mkdtempSync(join(tmpdir(), "athwart-killed-"));
});
afterAll(async () => {
  await served.close();
  rmSync(profile, { recursive: true, force: true });
});

describe("the browser killed at a random moment", () => {
  // A hundred times: npm run bench kill.
  it("opens the notebook with its history and with everything but at most the last second, three times", async () => {
    const outcomes: Outcome[] = [];
    await killRuns(3, { profile, address: served.address, random: seeded(7) }, (outcome) => outcomes.push(outcome));
    expect(outcomes).toHaveLength(3);
    expect(Math.max(...outcomes.map(({ deeds }) => deeds))).toBeGreaterThan(2);
    for (const { age } of outcomes) expect(age).toBeLessThanOrEqual(1000);
  });
});
