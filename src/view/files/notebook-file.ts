import { Refusal } from "../../notebook/refusal";
import { packNotebook, unpackNotebook } from "../../notebook/zip";
import { say } from "../../words/say";
import type { Desk } from "../desk";
import { askReplace } from "../dialogs/ask-replace";
import { fileName, handOut } from "./hand-out";

/** Hands out the whole notebook as one zip of its files. @returns whether it was; why not is said. */
export function saveNotebook(desk: Desk): boolean {
  const bounds = desk.bounds();
  if (bounds) {
    desk.say(bounds.save, "refused");
    return false;
  }
  handOut(`${fileName(desk.notebook.about.title)}.zip`, packNotebook(desk.notebook), "application/zip");
  desk.saved();
  desk.say(say`Notebook saved as a zip of its CSV files.`);
  return true;
}

/** Asks before work that only this window has gives way to another notebook. @returns whether it may. */
export async function mayLeave(desk: Desk, incoming: string): Promise<boolean> {
  if (!desk.isUnsaved) return true;
  const answer = await askReplace(desk.notebook.about.title, incoming);
  if (answer === "save") return saveNotebook(desk);
  return answer !== undefined;
}

/** Opens a notebook from a zip; one that cannot be read leaves the open notebook as it is. */
export async function openNotebook(desk: Desk, file: File): Promise<void> {
  try {
    const notebook = unpackNotebook(new Uint8Array(await file.arrayBuffer()));
    if (!(await mayLeave(desk, notebook.about.title))) return;
    desk.open(notebook);
    desk.say(say`${notebook.about.title} is open.`);
  } catch (problem) {
    if (!(problem instanceof Refusal)) throw problem;
    desk.say(say`${file.name}: ${problem.message} The open notebook is unchanged.`, "refused");
  }
}
