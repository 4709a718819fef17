import fc from "fast-check";
import { setCells } from "../../../src/notebook/edit-cells";
import {
  insertColumns,
  insertRows,
  removeColumns,
  removeRowGroups,
  removeRows,
} from "../../../src/notebook/edit-lines";
import { setNote } from "../../../src/notebook/edit-note";
import { addOption, removeOption, renameOption } from "../../../src/notebook/edit-options";
import { addPage, movePage, removePage, renamePage, replacePage } from "../../../src/notebook/edit-pages";
import { readNotebook } from "../../../src/notebook/files";
import { columnsOf, firstOption, isOptionPage, type Notebook, optionsOf, type Page } from "../../../src/notebook/model";
import { shiftFormula } from "../../../src/notebook/references";

/** Two option pages and a free sheet that refer to one another, as small as they can be. */
const smallFiles: ReadonlyMap<string, string> = new Map([
  [
    "notebook.json",
    JSON.stringify({
      version: 1,
      title: "Small",
      pages: [
        { name: "Supply", file: "supply.csv" },
        { name: "Side force", file: "side-force.csv", colour: "kept" },
        { name: "Free", file: "free.csv" },
      ],
      rows: { "Supply.run": { digits: 1 } },
      notes: { Free: "A note." },
      unknown: { list: [1, { deep: "kept" }] },
    }),
  ],
  ["supply.csv", "Quantity,Key,Unit,Basis,Sloop,Pilot\nRun,run,m,measured,10,12\nTwice,twice,m,,=E2*2,=F2*2\n"],
  [
    "side-force.csv",
    "Quantity,Key,Unit,Basis,Sloop,Pilot\r\nPush,push,N,chosen,500,700\r\nA metre,share,N/m,,=E2/Supply!E2,=F2/Supply!F2\r\n",
  ],
  ["free.csv", "a,='Side force'!E3\n007,=SUM(Supply!E2:F3)\n"],
]);

export const small = (): Notebook => readNotebook(smallFiles);

const texts = fc.constantFrom(
  "350",
  "",
  "007",
  "1.5",
  "text",
  "=E2*2",
  "=SUM(E2:F3)",
  "=Free!B1",
  "='Side force'!E2",
  "=1/0",
  "=1+(",
  "TRUE",
  "'=x",
  'a,"b"\nc',
  "\u202eabc",
  "=TRANSPOSE(A1:B2)",
  "=E2:E3*1",
  "=CONDUCTOR.DROP(E2,E3,50)",
  "=CONDUCTOR.DROP(E2,,F3)",
  "='Side force'!E2/Supply!E2",
  "=1E-5",
);

/** What a person does next; numbers choose among what there is. */
export interface Deed {
  readonly kind: (typeof kinds)[number];
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly text: string;
}

const cellKinds = ["edit", "edit", "edit", "edit", "edit", "fill", "paste", "note", "undo", "undo", "redo"] as const;
const structureKinds = [
  "insert",
  "remove",
  "groups",
  "columns",
  "add option",
  "remove option",
  "rename option",
  "add page",
  "remove page",
  "rename page",
  "move page",
  "import",
] as const;
const kinds = [...cellKinds, ...structureKinds, "reload"] as const;

const n = fc.nat(1000);
export const deed = (kind: fc.Arbitrary<Deed["kind"]>): fc.Arbitrary<Deed> =>
  fc.record({ kind, a: n, b: n, c: n, text: texts });

/** All kinds alike; a reload now and then. */
export const anyKind: fc.Arbitrary<Deed["kind"]> = fc.constantFrom(...kinds, ...cellKinds);

const pick = <T>(list: readonly T[], index: number): T => list[index % list.length] as T;

/** The edit that a deed means. @throws Refusal as edits do. */
export function edit(notebook: Notebook, { kind, a, b, c, text }: Deed): Notebook {
  const page: Page = pick(notebook.pages, a);
  const row = b % page.rows.length;
  const column = c % columnsOf(page);
  switch (kind) {
    case "edit":
      return setCells(notebook, [
        { page: page.id, row, column: isOptionPage(page) ? firstOption + (c % 2) : column, text },
      ]);
    case "fill":
      return setCells(
        notebook,
        [0, 1, 2].map((down) => ({
          page: page.id,
          row: row + down,
          column,
          text: text.startsWith("=") ? shiftFormula(text, down, 0) : text,
        })),
      );
    case "paste":
      return setCells(
        notebook,
        [0, 1].flatMap((down) =>
          [0, 1].map((right) => ({ page: page.id, row: row + down, column: column + right, text })),
        ),
      );
    case "insert":
      return insertRows(notebook, page.id, row, 1 + (c % 2));
    case "remove":
      return removeRows(notebook, page.id, row, 1 + (c % 3));
    case "groups":
      return removeRowGroups(notebook, page.id, [
        { at: row, count: 1 },
        { at: row + 2, count: 1 },
      ]);
    case "columns":
      return b % 2 ? insertColumns(notebook, page.id, column) : removeColumns(notebook, page.id, column);
    case "add option":
      return addOption(notebook, `Option ${a}`);
    case "remove option":
      return removeOption(notebook, pick(optionsOf(notebook), b));
    case "rename option":
      return renameOption(notebook, pick(optionsOf(notebook), b), `Hull ${a}`);
    case "add page":
      return addPage(notebook, `Page ${a}`, b % 2 ? "options" : "free");
    case "remove page":
      return removePage(notebook, page.id);
    case "rename page":
      return renamePage(notebook, page.id, `Sheet ${a}`);
    case "move page":
      return movePage(notebook, page.id, b % notebook.pages.length);
    case "import":
      return replacePage(
        notebook,
        page.id,
        page.rows.map((cells, i) => (i % 2 ? cells.with(column, text) : cells)),
      );
    default:
      return setNote(notebook, page.name, text);
  }
}
