import { readNotebook } from "../../src/notebook/files";
import type { Notebook, Page, Position } from "../../src/notebook/model";
import { pageByName } from "../../src/notebook/model";

/** A small notebook with two option pages and a free sheet that refer to one another. */
export const sampleFiles: ReadonlyMap<string, string> = new Map([
  [
    "notebook.json",
    `${JSON.stringify(
      {
        version: 1,
        title: "Sample",
        pages: [
          { name: "Supply", file: "supply.csv", colour: "kept" },
          { name: "Side force", file: "side-force.csv" },
          { name: "Free", file: "free.csv" },
        ],
        rows: { "Supply.area": { choices: [35, 50, 70, 95], digits: 0 } },
        notes: { Supply: "A note." },
        future: { field: [1, 2] },
      },
      undefined,
      2,
    )}\n`,
  ],
  [
    "supply.csv",
    `Quantity,Key,Unit,Basis,Sloop,Cruiser,Pilot
Motor and run,,,,,,
Current while running,I_run,A,data sheet,240,310,420
Conductor run out and back,run,m,measured,11.5,17,21.4
Conductor area,area,mm2,chosen,70,95,70
Allowed drop,most,V,rule,1.2,1.2,2.4
Voltage lost,drop,V,IEC 60228 class 5,"=CONDUCTOR.DROP(E3,E4,E5,50)","=CONDUCTOR.DROP(F3,F4,F5,50)","=CONDUCTOR.DROP(G3,G4,G5,50)"
Drop against limit,drop_ok,margin,at least 0,=E6/E7-1,=F6/F7-1,=G6/G7-1
Worst of all,worst,V,largest,=MAX($E7:$G7),=MAX($E7:$G7),=MAX($E7:$G7)
`,
  ],
  [
    "side-force.csv",
    `Quantity,Key,Unit,Basis,Sloop,Cruiser,Pilot
Push,push,N,chosen,500,700,1200
Volts lost,lost,V,Supply,=Supply!E7,=Supply!F7,=Supply!G7
Push a volt,share,1,quotient,=E2/E3,=F2/F3,=G2/G3
`,
  ],
  ["free.csv", "a,='Side force'!E2\n007,=SUM(Supply!E3:G3)\n,=B1&A2\n"],
]);

export const sample = (): Notebook => readNotebook(sampleFiles);

function page(notebook: Notebook, name: string): Page {
  const found = pageByName(notebook, name);
  if (!found) throw new Error(`no page ${name}`);
  return found;
}

/** `at(notebook, "Supply", "F7")` -> position. */
export function at(notebook: Notebook, name: string, cell: string): Position {
  const [, letter = "A", row = "1"] = /^([A-Z])(\d+)$/.exec(cell) ?? [];
  return { page: page(notebook, name).id, row: Number(row) - 1, column: letter.charCodeAt(0) - 65 };
}

/** The id of the page with a name. */
export const idOf = (notebook: Notebook, name: string): string => pageByName(notebook, name)?.id ?? "";
