import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { madeHere, projectFiles } from "./files";
import { top } from "./lint";

const read = (path: string): string => readFileSync(join(top, path), "utf8");
const files = projectFiles();

/** Lines that match, as path:line, so that a failure says where to look. */
const linesWith = (paths: readonly string[], pattern: RegExp): readonly string[] =>
  paths.flatMap((path) =>
    read(path)
      .split("\n")
      .flatMap((line, index) => (pattern.test(line) ? [`${path}:${index + 1}: ${line.trim()}`] : [])),
  );

describe("the repository", () => {
  it("holds these names at its top and no others", () => {
    const names = readdirSync(top).filter((name) => !name.startsWith(".") && !madeHere.includes(name));
    expect(names.sort()).toEqual([
      "DEVELOPERS.md",
      "LICENSE",
      "README.md",
      "package-lock.json",
      "package.json",
      "sheets",
      "src",
      "tests",
      "tsconfig.json",
      "vite.config.ts",
    ]);
  });

  it("mentions no path of a single machine", () => {
    expect(linesWith(files, /(^|[\s"'`(=:])\/(work|tmp|home|root|mnt|Users|private)(\/|\b)/)).toEqual([]);
  });

  it("mentions no host of a package registry", () => {
    expect(linesWith(files, /registry\.|npmjs\.(org|com)|yarnpkg\.com|jsr\.io/i)).toEqual([]);
  });

  it("names no file by what it is not", () => {
    expect(files.filter((path) => /(^|\/)(utils?|helpers?|common|misc)[./]/.test(path))).toEqual([]);
  });

  it("says in the first line of a long source file why it is long (past 150 lines)", () => {
    const long = files.filter((path) => /^src\/.*\.(ts|mjs)$/.test(path) && read(path).split("\n").length > 151);
    expect(long.filter((path) => !/^\/[/*]/.test(read(path)))).toEqual([]);
  });
});

describe("the tests", () => {
  const tests = files.filter((path) => path.endsWith(".test.ts"));

  it("are all run: none is skipped, put off or singled out", () => {
    expect(tests.length).toBeGreaterThan(0);
    const halfRun =
      /\b(it|test|describe|suite|context|ctx|bench)(\.\w+)*\.(skip|todo|only|fails|skipIf|runIf)\b|\bx(it|test|describe)\(/;
    expect(linesWith(tests, halfRun)).toEqual([]);
  });
});

describe("the packages", () => {
  const manifest = JSON.parse(read("package.json"));

  it("are locked without an address to fetch them from", () => {
    expect(linesWith(["package-lock.json"], /"resolved"/)).toEqual([]);
  });

  it("are named in exact versions", () => {
    const versions: readonly string[] = Object.values({ ...manifest.dependencies, ...manifest.devDependencies });
    expect(versions.length).toBeGreaterThan(0);
    expect(versions.filter((version) => !/^\d+\.\d+\.\d+(-[\w.]+)?$/.test(version))).toEqual([]);
  });

  it("run nothing of ours when they are installed", () => {
    const hooks = ["preinstall", "install", "postinstall", "prepublish", "preprepare", "prepare", "postprepare"];
    expect(Object.keys(manifest.scripts).filter((name) => hooks.includes(name))).toEqual([]);
  });
});
