import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { killRuns, type Outcome } from "../browser/killed";
import { servePage } from "../browser/serve-page";
import { seeded } from "../formula/random-expression";

/** Kills the browser so many times while a notebook is edited in it. @returns what was lost. */
export async function killBench(runs: number): Promise<string> {
  const profile = mkdtempSync(join(tmpdir(), "athwart-killed-"));
  // A copy: the page may be built anew while this goes on.
  const built = join(profile, "page");
  cpSync("dist/page", built, { recursive: true });
  const served = await servePage(built);
  const outcomes: Outcome[] = [];
  const seed = Date.now() % 2 ** 31;
  try {
    await killRuns(
      runs,
      { profile: join(profile, "profile"), address: served.address, random: seeded(seed) },
      (outcome, run) => {
        outcomes.push(outcome);
        console.log(
          `${run}: ${outcome.deeds} changes, ${outcome.lost} lost, the oldest ${outcome.age.toFixed(0)} ms old`,
        );
      },
    );
  } finally {
    await served.close();
    rmSync(profile, { recursive: true, force: true });
  }
  const ages = outcomes.map(({ age }) => age);
  const sum = (of: (outcome: Outcome) => number) => outcomes.reduce((all, outcome) => all + of(outcome), 0);
  return [
    `seed ${seed}: ${runs} kills, ${sum(({ deeds }) => deeds)} changes`,
    "every notebook valid, its last step taken back as it was made",
    `kills that lost nothing: ${ages.filter((age) => age === 0).length}; changes lost: ${sum(({ lost }) => lost)}`,
    `oldest change lost: ${Math.max(...ages).toFixed(0)} ms before the kill; older than a second: ${ages.filter((age) => age > 1000).length}`,
  ].join("\n");
}
