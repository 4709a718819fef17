import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { type SheetWishes, writeClass, writeTask } from "../../src/cli/course";
import { markFiles } from "../../src/cli/mark";
import { parsePage, printPage } from "../../src/notebook/page-csv";
import { worked } from "../course/course";
import { secretsOf } from "../course/secrets";
import { folderPath } from "../sheets/worked";
import { terminal } from "./terminal";

const course = folderPath("course");
/** Twelve tasks for several trainees, on a machine that may be busy. */
const patient = { timeout: 60_000 };
const none: SheetWishes = { trainee: "T07", print: false, html: false, solution: false, hints: undefined };

function task(args: readonly string[], wishes: Partial<SheetWishes> = {}): string {
  const output = terminal();
  writeTask(output, [course, ...args], { ...none, ...wishes });
  return output.text();
}

const folder = (): string => mkdtempSync(join(tmpdir(), "athwart-class-"));

function put(name: string, text: string): string {
  const path = join(folder(), name);
  writeFileSync(path, text);
  return path;
}

describe("task", patient, () => {
  it("prints a sheet for one trainee, without the solution in it", () => {
    const text = task(["4"], { print: true });
    expect(text).toMatch(
      /^Task 4: Entrance and stock length\n=+\n\nCourse at Tern Quay, edition 1\. Task sheet for T07\./,
    );
    expect(text).toContain("Length of tube to order");
    expect(text).not.toMatch(/TUNNEL\.|SHELL\.|upside down|Solution|Hint/);
  });

  it("writes the trainee's file when no sheet is asked for, of one task or of all", () => {
    expect(parsePage("f", task(["4"])).map((row) => row[0])).toContain("4");
    const all = new Set(
      parsePage("f", task([]))
        .slice(4)
        .map((row) => row[0]),
    );
    expect(all.size).toBe(12);
  });

  it("says nothing of any solution, step or mistake of any task in what is made for trainees", () => {
    const signs = [
      ["&lt;", "<"],
      ["&gt;", ">"],
      ["&quot;", '"'],
      ["&#39;", "'"],
      ["&amp;", "&"],
      ['""', '"'],
    ] as const;
    const made = [task([]), task([], { print: true }), task([], { html: true })].map((text) =>
      signs.reduce((plain, [written, sign]) => plain.replaceAll(written, sign), text).replace(/\s+/g, " "),
    );
    const secrets = worked.tasks.flatMap(secretsOf).map((secret) => secret.replace(/\s+/g, " "));
    for (const text of made) expect(secrets.filter((secret) => text.includes(secret))).toEqual([]);
    // They would be found: the trainer's sheets hold them.
    const solution = task([], { solution: true }).replace(/\s+/g, " ");
    expect(secrets.filter((secret) => solution.includes(secret)).length).toBeGreaterThan(100);
  });

  it("prints the solution only when it is asked for by name", () => {
    expect(task(["4"], { solution: true })).toMatch(
      /TUNNEL\.STOCK\(1000\*half_m,diameter,entrance,flare,allowance\)\s=\s\d/,
    );
    expect(task(["4"], { solution: true, html: true })).toContain("<h2>The way to it</h2>");
  });

  it("prints so many hints as are asked for", () => {
    expect(task(["4"], { print: true, hints: "1" })).toContain("1. The entrance is the angle whose tangent");
    expect(() => task(["4"], { print: true, hints: "many" })).toThrow("--hints many: give how many hints to print");
  });

  it("needs a course and a trainee, and a task that there is", () => {
    expect(() => task(["4"], { trainee: undefined })).toThrow("task takes a course, a task and a trainee");
    expect(() => task(["13"])).toThrow('There is no task "13"');
    expect(() => writeTask(terminal(), [folderPath("three-hulls")], none)).toThrow("has no tasks");
  });
});

describe("class", patient, () => {
  it("writes all trainees' numbers and answers as CSV", () => {
    const output = terminal();
    writeClass(output, [course, put("class.csv", "Trainee,Name\nT01,Ann\nT02,Bo\n")], undefined, none);
    const rows = parsePage("f", output.text());
    expect(new Set(rows.slice(1).map((row) => row[0]))).toEqual(new Set(["T01", "T02"]));
  });

  it("writes a file and a sheet for each trainee, and solutions only on request", () => {
    const list = put("class.csv", "Trainee\nT01\nA/../B\n");
    const [plain, whole] = [join(folder(), "out"), join(folder(), "out")];
    writeClass(terminal(), [course, list], plain, none);
    expect(readdirSync(plain).sort()).toEqual(["A-B.csv", "A-B.html", "T01.csv", "T01.html"]);
    for (const name of readdirSync(plain)) {
      expect(readFileSync(join(plain, name), "utf8")).not.toMatch(/WIND\.PUSH|knots taken/);
    }
    writeClass(terminal(), [course, list], whole, { ...none, solution: true });
    expect(readdirSync(whole)).toContain("T01-solution.html");
    expect(readFileSync(join(whole, "T01-solution.html"), "utf8")).toContain("knots taken");
  });

  it("refuses two trainees who would share a file", () => {
    const list = put("class.csv", "Trainee\nA B\nA-B\n");
    expect(() => writeClass(terminal(), [course, list], folder(), none)).toThrow(
      "A-B would get the same file as another trainee",
    );
  });
});

describe("mark", patient, () => {
  const answered = (trainee: string, value: string): string => {
    const rows = parsePage("f", task([], { trainee })).map((row) =>
      row[1] === "answer" && row[0] === "7" && row[2] === "tomorrow" ? [...row.slice(0, 5), value] : row,
    );
    return put(`${trainee}.csv`, printPage(rows));
  };

  it("prints marks, scores, mistakes of the class and who is missing", () => {
    const output = terminal();
    const files = [answered("T01", "stop and ask"), answered("T02", "Go on with the rule")];
    const classList = put("class.csv", "Trainee,Name\nT01,\nT02,\nT03,\n");
    markFiles(output, [course, ...files], { classList, csv: false, json: false });
    const text = output.text();
    expect(text).toMatch(/^T01 {2}1 of \d+ right$/m);
    expect(text).toMatch(/^7 +tomorrow +1 {2}rule used outside its range +T02$/m);
    expect(text).toMatch(/tomorrow +Go on with the rule +not right: rule used outside its range\. The rule was read/);
    expect(text).toMatch(/No file came from: T03\n$/);
  });

  it("gives the same as CSV and as JSON", () => {
    const wishes = { classList: undefined, csv: false, json: false };
    const file = answered("T01", "stop and ask");
    const [csv, json] = [terminal(), terminal()];
    markFiles(csv, [course, file], { ...wishes, csv: true });
    markFiles(json, [course, file], { ...wishes, json: true });
    const rights = parsePage("f", csv.text()).filter((row) => row[7] === "right");
    expect(rights.map((row) => row[4])).toEqual(["tomorrow"]);
    const found: { trainees: unknown } = JSON.parse(json.text());
    expect(found.trainees).toEqual([{ trainee: "T01", right: 1, asked: expect.any(Number), refused: [] }]);
  });

  it("says which file cannot be read", () => {
    const wishes = { classList: undefined, csv: false, json: false };
    expect(() => markFiles(terminal(), [course], wishes)).toThrow("mark takes a course and the files to mark");
    expect(() => markFiles(terminal(), [course, "nowhere.csv"], wishes)).toThrow("nowhere.csv cannot be read");
  });
});
