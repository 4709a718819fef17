import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { lint, top } from "./lint";

/** Each folder of src, and the folders that it may import from. */
const directions: Readonly<Record<string, readonly string[]>> = {
  words: [],
  units: ["words"],
  formula: ["words", "units"],
  tables: ["words", "units", "formula"],
  functions: ["words", "units", "formula", "tables"],
  engine: ["words", "units", "formula", "tables", "functions"],
  notebook: ["words", "units", "formula", "tables", "functions", "engine"],
  audit: ["words", "units", "formula", "tables", "functions", "engine", "notebook"],
  study: ["words", "units", "formula", "tables", "functions", "engine", "notebook"],
  course: ["words", "units", "formula", "tables", "functions", "engine", "notebook"],
  figures: ["words", "units", "formula", "tables", "functions", "engine", "notebook", "audit", "study"],
  paper: ["words", "units", "formula", "tables", "functions", "engine", "notebook", "audit", "study", "figures"],
  view: [
    "words",
    "units",
    "formula",
    "tables",
    "functions",
    "engine",
    "notebook",
    "audit",
    "study",
    "course",
    "figures",
    "paper",
  ],
  cli: [
    "words",
    "units",
    "formula",
    "tables",
    "functions",
    "engine",
    "notebook",
    "audit",
    "study",
    "course",
    "figures",
    "paper",
  ],
};
const folders = Object.keys(directions);

/** Each outside library, and the folder that imports it (the random generator has two); no other part of that folder's parent does. */
const importers: Readonly<Record<string, string>> = {
  "@fontsource/ibm-plex-mono": "view",
  "@fontsource/ibm-plex-sans": "view",
  "@fontsource/ibm-plex-sans-condensed": "view",
  "@tarikjabiri/dxf": "figures",
  "d3-scale": "figures",
  "d3-shape": "figures",
  dompurify: "view",
  fflate: "notebook",
  handsontable: "view",
  hyperformula: "engine",
  idb: "notebook/keeping",
  lit: "view",
  marked: "view",
  mathjs: "units",
  papaparse: "notebook",
  "pure-rand": "study and course",
  "workbox-precaching": "view",
  zod: "notebook",
};

/** Where an imported name is found, by file: one file a folder and import, at two depths. */
const question = (from: string, what: string, depth: "" | "deep/") =>
  `src/${from}/${depth}${what.replace(/[^a-z]+/g, "-").replace(/^-/, "")}.ts`;

describe("import direction", () => {
  const files: Record<string, string> = {};
  for (const from of folders) {
    for (const to of folders.filter((folder) => folder !== from)) {
      files[question(from, to, "")] = `import "../${to}";\n`;
      files[question(from, to, "deep/")] = `export type { Thing } from "../../${to}/part/thing";\n`;
    }
  }
  const refused = new Set(
    lint(files)
      .filter(({ rule }) => rule === "noRestrictedImports")
      .map(({ file }) => file),
  );

  it.each(Object.entries(directions))("src/%s imports from %j and from no other folder", (from, allowed) => {
    const others = folders.filter((folder) => folder !== from);
    const open = (depth: "" | "deep/") => others.filter((to) => !refused.has(question(from, to, depth)));
    expect(open("")).toEqual(allowed);
    expect(open("deep/")).toEqual(allowed);
  });

  it("has a limit for every folder of src", () => {
    const found = readdirSync(join(top, "src"), { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map(({ name }) => name);
    expect(folders).toEqual(expect.arrayContaining(found));
  });
});

describe("outside libraries", () => {
  const libraries = Object.keys(importers);
  const places = [...folders, "notebook/keeping"];
  const files: Record<string, string> = {};
  for (const from of places)
    for (const library of libraries) files[question(from, library, "")] = `import "${library}";\n`;
  const refused = new Set(
    lint(files)
      .filter(({ rule }) => rule === "noRestrictedImports")
      .map(({ file }) => file),
  );

  it.each(Object.entries(importers))("%s is imported from src/%s alone", (library, importer) => {
    expect(places.filter((from) => !refused.has(question(from, library, "")))).toEqual(importer.split(" and "));
  });

  it("has an importer for every library in package.json", () => {
    const { dependencies } = JSON.parse(readFileSync(join(top, "package.json"), "utf8"));
    expect(libraries.sort()).toEqual(Object.keys(dependencies).sort());
  });
});

describe("single limits", () => {
  const cases: readonly (readonly [title: string, file: string, text: string, rule: string | undefined])[] = [
    [
      "mathjs/number is read in src/formula/read.ts",
      "src/formula/read.ts",
      'import { create } from "mathjs/number";\nimport type { MathNode } from "mathjs";\nexport const node = (): MathNode => create({});\n',
      undefined,
    ],
    ["mathjs/number is read nowhere else", "src/formula/run.ts", 'import "mathjs/number";\n', "noRestrictedImports"],
    ["a part of a library is a library", "src/notebook/a.ts", 'import "handsontable/base";\n', "noRestrictedImports"],
    ["the grid's parts are imported from src/view", "src/view/grid.ts", 'import "handsontable/base";\n', undefined],
    ["Node's modules stay out of what a browser runs", "src/view/node.ts", 'import "node:fs";\n', "noNodejsModules"],
    ["Node's modules stay out of the engine", "src/engine/node.ts", 'import "node:fs";\n', "noNodejsModules"],
    ["Node's modules are imported from src/cli", "src/cli/node.ts", 'import "node:fs/promises";\n', undefined],
    ["Node's modules are imported from the tests", "tests/node.ts", 'import "node:fs";\n', undefined],
    ["the page is touched in src/view", "src/view/page.ts", "export const title = document.title;\n", undefined],
    [
      "the page is touched nowhere else",
      "src/figures/page.ts",
      "export const title = document.title;\n",
      "noRestrictedGlobals",
    ],
    ["the database is opened in its folder", "src/notebook/keeping/d.ts", 'import "idb";\n', undefined],
    [
      "locks between windows are asked for in the same folder",
      "src/notebook/keeping/l.ts",
      "export const locks = navigator.locks;\n",
      undefined,
    ],
    [
      "and nowhere else below the screen",
      "src/notebook/l.ts",
      "export const locks = navigator.locks;\n",
      "noRestrictedGlobals",
    ],
    [
      "a cycle of imports is refused",
      "src/units/b.ts",
      'import { a } from "./a";\nexport const b = a;\n',
      "noImportCycles",
    ],
    [
      "a library of the tests stays in the tests",
      "src/cli/check.ts",
      'import "fast-check";\n',
      "noUndeclaredDependencies",
    ],
    ["any is refused", "src/units/any.ts", "export const loose = (value: any): number => value;\n", "noExplicitAny"],
    [
      "a type is imported as a type",
      "src/units/type.ts",
      'import { Kind } from "./kind";\nexport const same = (kind: Kind): Kind => kind;\n',
      "useImportType",
    ],
    [
      "a promise is waited for",
      "src/units/promise.ts",
      "const soon = async (): Promise<number> => 1;\nsoon();\n",
      "noFloatingPromises",
    ],
    [
      "a skipped test is refused",
      "tests/a.test.ts",
      `import { expect, it } from "vitest";\n\nit.${"skip"}("counts", () => {\n  expect(1).toBe(1);\n});\n`,
      "noSkippedTests",
    ],
  ];
  const refusals = lint({
    ...Object.fromEntries(cases.map(([, file, text]) => [file, text])),
    "src/units/a.ts": 'import { b } from "./b";\nexport const a = b;\n',
  });

  it.each(cases)("%s", (_title, file, _text, rule) => {
    const found = refusals.filter((refusal) => refusal.file === file).map((refusal) => refusal.rule);
    if (rule === undefined) expect(found).toEqual([]);
    else expect(found).toContain(rule);
  });
});
