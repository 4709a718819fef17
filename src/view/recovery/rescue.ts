import type { Notebook } from "../../notebook/model";
import { packNotebook } from "../../notebook/zip";

interface Rescued {
  readonly name: string;
  readonly content: string | Uint8Array;
  readonly type: string;
}

/** The notebook as a file that this program opens; as plain text should even that fail, so that nothing is lost. */
export function rescued(notebook: Notebook, name: string): Rescued {
  try {
    return { name: `${name}.zip`, content: packNotebook(notebook), type: "application/zip" };
  } catch {
    const { about, pages } = notebook;
    return { name: `${name}.json`, content: JSON.stringify({ about, pages }, undefined, 1), type: "application/json" };
  }
}
