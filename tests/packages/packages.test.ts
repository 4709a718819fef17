import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { top } from "../repository/lint";
import { allowedFaults, allowedLicences, allowedPackages } from "./allowed.mjs";
import { readFaults } from "./ask-faults.mjs";

interface Entry {
  readonly version: string;
  readonly license?: string;
  readonly integrity?: string;
  readonly hasInstallScript?: boolean;
}

const json = (path: string) => JSON.parse(readFileSync(join(top, path), "utf8"));
const lock: Record<string, Entry> = json("package-lock.json").packages;
const packages = Object.entries(lock).filter(([path]) => path !== "");
const nameOf = (path: string): string => path.slice(path.lastIndexOf("node_modules/") + "node_modules/".length);
const manifest = json("package.json");

describe("the packages that the program is built of", () => {
  it("carry a checksum each, so that nothing else is installed in their place", () => {
    expect(packages.length).toBeGreaterThan(100);
    expect(
      packages.filter(([, { integrity }]) => !/^sha512-[\w+/]{86}==$/.test(integrity ?? "")).map(([path]) => path),
    ).toEqual([]);
  });

  it("are those of package.json, in the same versions in the lock file and on the disk", () => {
    const wanted: [string, string][] = Object.entries({ ...manifest.dependencies, ...manifest.devDependencies });
    for (const [name, version] of wanted) {
      expect([name, lock[`node_modules/${name}`]?.version]).toEqual([name, version]);
      expect([name, json(`node_modules/${name}/package.json`).version]).toEqual([name, version]);
    }
    const root = json("package-lock.json").packages[""];
    expect([root.dependencies, root.devDependencies]).toEqual([manifest.dependencies, manifest.devDependencies]);
  });

  it("have licences that are allowed with a reason, and those on the disk are the ones of the lock file", () => {
    const odd = packages.filter(
      ([path, { license = "none" }]) => !(license in allowedLicences) && !(nameOf(path) in allowedPackages),
    );
    expect(odd.map(([path, { license }]) => `${path}: ${license}`)).toEqual([]);
    for (const [path, { license }] of packages) {
      const file = join(top, path, "package.json");
      if (existsSync(file)) expect([path, JSON.parse(readFileSync(file, "utf8")).license]).toEqual([path, license]);
    }
  });

  it("have every exception in use, and a reason with each", () => {
    const names = new Set(packages.map(([path]) => nameOf(path)));
    const licences = new Set(packages.map(([, { license }]) => license));
    expect(Object.keys(allowedPackages).filter((name) => !names.has(name))).toEqual([]);
    expect(Object.keys(allowedLicences).filter((licence) => !licences.has(licence))).toEqual([]);
    for (const reason of Object.values({ ...allowedLicences, ...allowedPackages, ...allowedFaults })) {
      expect(reason.length).toBeGreaterThan(12);
    }
  });

  it("run nothing when they are installed", () => {
    expect(packages.filter(([, { hasInstallScript }]) => hasInstallScript).map(([path]) => path)).toEqual([]);
    expect(readFileSync(join(top, ".npmrc"), "utf8")).toContain("ignore-scripts=true");
  });

  it("are each named in DEVELOPERS.md with what they replace", () => {
    const told =
      readFileSync(join(top, "DEVELOPERS.md"), "utf8").split("## Dependencies and what each replaces")[1] ?? "";
    const untold = Object.keys({ ...manifest.dependencies, ...manifest.devDependencies }).filter((name) => {
      const [scope = "", short = ""] = name.split("/");
      const family =
        short &&
        (told.includes(`${scope}/*`) ||
          told.includes(
            `, ${short.replace("ibm-plex-sans-condensed", "-sans-condensed").replace("ibm-plex-mono", "-mono")}`,
          ));
      return !told.includes(name) && !family;
    });
    expect(untold).toEqual([]);
  });
});

describe("what the registry says of them", () => {
  it("counts as a fault unless it is allowed with a reason", () => {
    const via = [{ title: "Reads past the end", url: "https://github.com/advisories/GHSA-aaaa-bbbb-cccc" }, "another"];
    expect(readFaults(JSON.stringify({ vulnerabilities: { parcel: { via } } }))).toEqual({
      kind: "faults",
      sentence: "parcel: Reads past the end (GHSA-aaaa-bbbb-cccc)",
    });
    expect(readFaults(JSON.stringify({ vulnerabilities: {} })).kind).toBe("clean");
  });

  it("is said to be unknown when there is no answer, and never taken for good", () => {
    expect(readFaults(JSON.stringify({ statusCode: 405 }))).toEqual({
      kind: "silent",
      sentence: "could not be asked: the registry does not answer such questions (405)",
    });
    for (const nothing of ["", "{}", "<html>", "null"]) expect(readFaults(nothing).kind).toBe("silent");
  });
});
