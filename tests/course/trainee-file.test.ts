import { describe, expect, it } from "vitest";
import { allowanceWords } from "../../src/course/allowance";
import { givenIn } from "../../src/course/asked";
import { markWordsOf } from "../../src/course/mark";
import { numbersFor, scalarOf } from "../../src/course/numbers";
import { taskSheet } from "../../src/course/sheet";
import { sheetsHtml, sheetText } from "../../src/course/sheet-print";
import type { Task } from "../../src/course/task";
import { markTraineeFile, printTraineeFile } from "../../src/course/trainee-file";
import { parsePage, printPage } from "../../src/notebook/page-csv";
import { courseOf, type Rows, smallTask, worked, written } from "./course";
import { secretsOf } from "./secrets";

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

/** Fills the answers into a trainee's file, as a person does in another program. */
function filled(file: string, answer: (task: string, name: string) => string): string {
  const rows = parsePage("file", file);
  return printPage(
    rows.map((row) => (row[1] === "answer" ? [...row.slice(0, 5), answer(row[0] ?? "", row[2] ?? "")] : row)),
  );
}

const taskAt = (number: string): Task => worked.tasks[Number(number) - 1] as Task;

/** The right answer, written as the sheet asks. */
const right = (trainee: string) => (number: string, name: string) => {
  const task = taskAt(number);
  const answer = task.answers.find((one) => one.name === name);
  const value = scalarOf(numbersFor(worked, task, trainee).worked.values.get(name));
  return answer && value !== undefined ? written(allowanceWords(answer.allowance, answer.unit), value) : "";
};

/** Everything that a trainee gets to see of a task: the file, the sheet as text and as a page. */
function seenBy(trainee: string, task: Task): readonly string[] {
  const sheet = taskSheet(worked, numbersFor(worked, task, trainee));
  const unescaped = sheetsHtml("", [sheet]).replaceAll("&#39;", "'").replaceAll("&quot;", '"').replaceAll("&gt;", ">");
  return [printTraineeFile(worked, trainee, { tasks: [task] }), sheetText(sheet).replace(/\s+/g, " "), unescaped];
}

const numbersIn = (text: string): readonly string[] => text.match(/\d+(?:\.\d+)?/g) ?? [];

describe("what a trainee gets", { timeout: 60_000 }, () => {
  it.each(worked.tasks.map((task) => [task.title, task] as const))(
    "%s: file, sheet and page hold no solution, step, mistake or advice",
    (_title, task) => {
      const secrets = secretsOf(task);
      expect(secrets.length).toBeGreaterThan(8);
      for (const trainee of ["T07", "T08", "Ann"]) {
        for (const seen of seenBy(trainee, task)) {
          expect(secrets.filter((secret) => seen.includes(secret))).toEqual([]);
        }
      }
    },
  );

  it.each(worked.tasks.map((task) => [task.title, task] as const))(
    "%s: every number in the file is one that was given, or stands in the text for everybody",
    (_title, task) => {
      const { question, rule, source, beyond, caution, hint } = task.texts;
      const common = [...question, ...rule, ...source, ...beyond, ...caution, ...hint].map((text) =>
        text.replace(/\{\w+\}/g, ""),
      );
      const labels = [...task.drawn, ...task.made, ...task.answers].flatMap(({ about, unit }) => [about, unit]);
      const allowances = task.answers.map(({ allowance, unit }) => allowanceWords(allowance, unit));
      for (const trainee of ["T07", "T08"]) {
        const given = givenIn(numbersFor(worked, task, trainee)).map(({ value }) => String(value));
        const known = new Set(
          [
            ...common,
            ...labels,
            ...allowances,
            ...given,
            trainee,
            String(task.number),
            worked.edition,
            worked.title,
          ].flatMap(numbersIn),
        );
        expect(
          numbersIn(printTraineeFile(worked, trainee, { tasks: [task] })).filter((number) => !known.has(number)),
        ).toEqual([]);
      }
    },
  );

  it("does not depend on the solution: seven times the answer and other mistakes leave every byte as it is", () => {
    const changed: Rows = smallTask.map(([part = "", name = "", unit = "", text = "", how = "", within = ""]) => {
      if (name === "verdict" && part === "answer") return [part, name, unit, text, how.replace("1200", "8400"), within];
      if (name === "verdict")
        return [part, name, unit, "another name", how.replace("1200", "8400"), within, "Other advice."];
      if (part === "mistake") return [part, name, unit, "another name", `7*(${how})`, within, "Other advice."];
      return [part, name, unit, text, name === "push" ? `7*(${how})` : how, within];
    });
    const [one, other] = [courseOf(smallTask), courseOf(changed)];
    const value = (course: typeof one) =>
      scalarOf(numbersFor(course, course.tasks[0] as Task, "T07").worked.values.get("push"));
    expect(value(other)).toBe(7 * Number(value(one)));
    expect(printTraineeFile(other, "T07")).toBe(printTraineeFile(one, "T07"));
    const page = (course: typeof one) =>
      sheetsHtml("", [taskSheet(course, numbersFor(course, course.tasks[0] as Task, "T07"))]);
    expect(page(other)).toBe(page(one));
  });

  it("holds what the trainee typed when it is saved again, harmless to other programs, and is marked by it", () => {
    const answers: Record<string, string> = { pressure: "1 kN", push: "=1+1" };
    const file = printTraineeFile(worked, "T07", { tasks: [taskAt("1")], typed: (_, name) => answers[name] ?? "" });
    const typed = new Map(parsePage("file", file).map((row) => [row[2], row[5]]));
    expect([typed.get("pressure"), typed.get("push")]).toEqual(["1 kN", "'=1+1"]);
    const marks = markTraineeFile(worked, "T07.csv", bytes(file)).tasks[0]?.marks.map(({ mark }) => mark.kind);
    expect(marks).toEqual(["unreadable", "unreadable"]);
  });

  it("prints hints only when the trainer asks for them, and leaves them out of the file on request", () => {
    const numbers = numbersFor(worked, taskAt("1"), "T07");
    const [first = "", second = ""] = taskAt("1").texts.hint;
    const sheet = sheetText(taskSheet(worked, numbers, 1));
    expect(sheet).toContain(first);
    expect(sheet).not.toContain(second);
    const inFile = (hints?: number) =>
      parsePage(
        "file",
        printTraineeFile(worked, "T07", { tasks: [taskAt("1")], ...(hints !== undefined && { hints }) }),
      )
        .filter((row) => row[1] === "hint")
        .map((row) => row[4]);
    expect(inFile()).toEqual(taskAt("1").texts.hint);
    expect(inFile(1)).toEqual([first]);
    expect(inFile(0)).toEqual([]);
  });
});

describe("a file that comes back", { timeout: 60_000 }, () => {
  const empty = printTraineeFile(worked, "T07");
  const answered = filled(empty, right("T07"));
  const kinds = (file: string) => {
    const { trainee, tasks } = markTraineeFile(worked, "T07.csv", bytes(file));
    return { trainee, tasks, kinds: new Set(tasks.flatMap(({ marks }) => marks.map(({ mark }) => mark.kind))) };
  };

  it("is all right when all answers are, over the whole course", () => {
    const { trainee, tasks, kinds: found } = kinds(answered);
    expect(trainee).toBe("T07");
    expect(tasks.length).toBe(12);
    expect([...found]).toEqual(["right"]);
  });

  it("is blank when nothing was filled in", () => {
    expect([...kinds(empty).kinds]).toEqual(["blank"]);
  });

  it("may have gone through another program: semicolons, decimal commas, CRLF and a byte order mark", () => {
    const rows = parsePage("file", answered).map((row) =>
      row.map((cell, i) => (i === 5 && /^-?\d+\.\d{1,2}$/.test(cell) ? cell.replace(".", ",") : cell)),
    );
    const quoted = (cell: string) => (/[;"\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);
    const text = `\uFEFF${rows.map((row) => row.map(quoted).join(";")).join("\r\n")}\r\n`;
    expect([...kinds(text).kinds]).toEqual(["right"]);
  });

  it("is not marked with somebody else's numbers", () => {
    const swapped = filled(printTraineeFile(worked, "T08"), right("T08")).replace(",trainee,,,,T08", ",trainee,,,,T07");
    const { tasks } = markTraineeFile(worked, "T07.csv", bytes(swapped));
    expect(tasks.map(({ marks }) => marks.length)).toEqual(worked.tasks.map(() => 0));
    expect(tasks[1]?.refused).toMatch(
      /^the file says [a-z]+ [\d.]+, T07 has [\d.]+; it is another trainee's file, or of another edition$/,
    );
  });

  it("is not marked when the numbers were taken out", () => {
    const rows = parsePage("file", answered).filter((row) => row[1] !== "given");
    const { tasks } = markTraineeFile(worked, "T07.csv", bytes(printPage(rows)));
    expect(tasks[0]?.refused).toBe(
      "the file says wind (nothing), T07 has 27; it is another trainee's file, or of another edition",
    );
  });

  it("names the mistake that was made", () => {
    const numbers = numbersFor(worked, taskAt("3"), "T07");
    const depth = String(scalarOf(numbers.worked.values.get("light")));
    const file = filled(empty, (task, name) => (task === "3" && name === "cover" ? depth : ""));
    const marks = markTraineeFile(worked, "T07.csv", bytes(file)).tasks[2]?.marks ?? [];
    expect(marks[0] && markWordsOf(marks[0].mark)).toMatch(/^not right: cover measured from the axis\. /);
  });

  it.each([
    ["a,b\n1,2\n", "T07.csv, row 1: a trainee's file begins with Task,Part,Name,Unit,Text,Value."],
    [empty.replace(",trainee,,,,T07\n", ""), 'T07.csv: the row "trainee" is missing or has no value'],
    [empty.replace(/^12,/gm, "13,").replace(taskAt("12").title, "Another task"), 'There is no task "Another task"'],
  ])("of another shape is refused", (file, sentence) => {
    expect(() => markTraineeFile(worked, "T07.csv", bytes(file))).toThrow(sentence);
  });
});
