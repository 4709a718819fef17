import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, realpathSync, rmSync, statSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { top } from "./lint";

/** A project of its own with the launcher and the build settings of this one, and a program of two lines. */
const project = realpathSync(mkdtempSync(join(tmpdir(), "athwart-launch-")));
const elsewhere = join(project, "yard");
const bundle = join(project, "dist/terminal/athwart.js");

const main = `import { word } from "./word";
process.stdout.write([word, process.cwd(), ...process.argv.slice(2)].join("|"));
`;
const sayWord = (word: string): void =>
  writeFileSync(join(project, "src/cli/word.ts"), `export const word: string = "${word}";\n`);

const launch = (cwd: string, typedIn: string, ...args: readonly string[]) => {
  const launcher = join(project, "src/cli/launch.mjs");
  const env = { ...process.env, INIT_CWD: typedIn };
  const { status, stdout, stderr } = spawnSync(process.execPath, [launcher, ...args], { cwd, env, encoding: "utf8" });
  return { status, stdout, stderr };
};

beforeAll(() => {
  for (const path of ["src/cli/launch.mjs", "package.json", "package-lock.json", "vite.config.ts"])
    cpSync(join(top, path), join(project, path));
  symlinkSync(join(top, "node_modules"), join(project, "node_modules"));
  mkdirSync(elsewhere);
  writeFileSync(join(project, "src/cli/main.ts"), main);
  sayWord("one");
});

afterAll(() => rmSync(project, { recursive: true }));

describe("the launcher of the terminal program", { timeout: 60_000 }, () => {
  it("builds first, and writes nothing of that among the answers", () => {
    expect(launch(project, project, "eval", "=1 + 1")).toEqual({
      status: 0,
      stdout: `one|${project}|eval|=1 + 1`,
      stderr: "",
    });
  });

  it("counts paths from where the command was typed", () => {
    expect(launch(project, elsewhere).stdout).toBe(`one|${elsewhere}`);
    expect(launch(elsewhere, project).stdout).toBe(`one|${elsewhere}`);
  });

  it("does not build again when nothing has changed", () => {
    const before = statSync(bundle).mtimeMs;
    launch(project, project);
    expect(statSync(bundle).mtimeMs).toBe(before);
  });

  it("builds again after an edit", () => {
    sayWord("two");
    expect(launch(project, project).stdout).toBe(`two|${project}`);
  });

  it("says in words that it cannot build, and answers nothing", () => {
    rmSync(join(project, "src/cli/word.ts"));
    const { status, stdout, stderr } = launch(project, project);
    expect({ status, stdout }).toEqual({ status: 1, stdout: "" });
    expect(stderr).toContain("The terminal program could not be built");
  });
});
