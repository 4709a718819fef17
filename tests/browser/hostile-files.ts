import { strToU8, zipSync } from "fflate";
import { printPage } from "../../src/notebook/page-csv";
import { hostile } from "../hostile/strings";

/** A title and names have a limit of their own; longer texts stand in cells and notes. */
const names = hostile.filter((text) => text.length <= 200 && !text.includes("\n"));
const name = (n: number): string => names[n % names.length] as string;

/** Keys, units and quantities, every hostile text in each of them, and some of them as options. */
function optionRows(title: number): string[][] {
  const options = [name(title + 3), name(title + 4)];
  return [
    ["Quantity", "Key", "Unit", "Basis", ...options],
    ...hostile.map((text, i) => [text, text, text, text, `'${text}`, i % 2 ? "=1/0" : "12.5"]),
  ];
}

/** A notebook in which every text that a file can hold means harm. */
export function hostileNotebook(): Buffer {
  const pages = [
    { name: name(0), file: "a.csv" },
    { name: name(17), file: "b.csv" },
    { name: name(31), file: "c.csv" },
  ];
  const about = {
    version: 1,
    title: name(1),
    revision: name(2),
    date: name(5),
    scenario: name(6),
    pages,
    notes: Object.fromEntries(pages.map((page) => [page.name, hostile.join("\n\n")])),
    rows: { [`${name(0)}.${name(9)}`]: { digits: 2 } },
    reviews: { [name(7)]: { who: name(8), when: name(9), hash: name(10) } },
    accepted: [{ rule: name(1), at: name(2), message: name(3), reason: name(4), who: name(5), when: name(6) }],
    settings: Object.fromEntries(names.map((text) => [text, text])),
  };
  const files = {
    "notebook.json": JSON.stringify(about),
    "a.csv": printPage(optionRows(0)),
    "b.csv": printPage(optionRows(0)),
    "c.csv": printPage(hostile.map((text) => [text, `'${text}`, `="${text.replaceAll('"', '""').slice(0, 200)}"`])),
  };
  return Buffer.from(zipSync(Object.fromEntries(Object.entries(files).map(([file, text]) => [file, strToU8(text)]))));
}

/** A trainee's file in whose every cell somebody wrote something else. */
export const hostileTraineeFile = (): string =>
  printPage([
    ["Task", "Part", "Name", "Unit", "Text", "Value"],
    ["", "course", "", "", name(1), name(2)],
    ["", "trainee", "", "", "", name(3)],
    ["1", "task", "", "", name(4), ""],
    ...hostile.map((text) => ["1", "question", "", "", text, ""]),
    ...hostile.slice(0, 20).map((text, i) => ["1", "given", `g${i}`, text, text, text]),
    ["1", "answer", "a", name(6), name(7), name(8)],
    ...hostile.slice(0, 20).map((text) => ["1", "hint", "", "", text, ""]),
  ]);

/** A foreign table with every text in it. */
export const hostileTable = (): string => printPage(hostile.map((text, i) => [String(i), text, text]));
