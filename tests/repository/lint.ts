import { spawnSync } from "node:child_process";
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";

/** The top folder of the project. */
export const top = resolve(import.meta.dirname, "../..");

interface Diagnostic {
  readonly category: string;
  readonly message: string;
  readonly location: { readonly path: string };
}

/** Something that the linter refuses. `rule` is the last part of its name. */
export interface Refusal {
  readonly file: string;
  readonly rule: string;
  readonly message: string;
}

/**
 * What the project's linter refuses in files that exist for this question only.
 *
 * @param files path inside the project, to text
 * @throws Error when the linter itself cannot run
 */
export function lint(files: Readonly<Record<string, string>>): readonly Refusal[] {
  const folder = mkdtempSync(join(tmpdir(), "athwart-lint-"));
  try {
    for (const name of [".biome.jsonc", "package.json"]) copyFileSync(join(top, name), join(folder, name));
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), text);
    }
    const biome = join(top, "node_modules/.bin/biome");
    const args = ["lint", "--reporter=json", "--max-diagnostics=none", "src", "tests"];
    const run = spawnSync(biome, args, { cwd: folder, encoding: "utf8" });
    if (!run.stdout.startsWith("{")) throw new Error(`The linter did not run: ${run.stdout}${run.stderr}`);
    const report: { readonly diagnostics: readonly Diagnostic[] } = JSON.parse(run.stdout);
    return report.diagnostics.map(({ category, message, location }) => ({
      file: location.path,
      rule: category.split("/").at(-1) ?? "",
      message,
    }));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
