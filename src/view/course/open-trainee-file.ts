import { isTraineeTable } from "../../course/trainee-file";
import { traineeNotebook } from "../../course/trainee-notebook";
import { Refusal } from "../../notebook/refusal";
import { detectShape, readTable } from "../../notebook/table-in";
import { say } from "../../words/say";
import type { Desk } from "../desk";
import { mayLeave } from "../files/notebook-file";

function isTraineeFile(name: string, bytes: Uint8Array): boolean {
  try {
    return isTraineeTable(readTable(name, bytes, detectShape(bytes)));
  } catch (problem) {
    if (problem instanceof Refusal) return false;
    throw problem;
  }
}

/** Opens a trainee's file as a notebook of its tasks. @returns false for a file that is none. */
export async function openTraineeFile(desk: Desk, file: File): Promise<boolean> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  if (!isTraineeFile(file.name, bytes)) return false;
  const notebook = desk.attempt(() => traineeNotebook(file.name, bytes));
  if (notebook && (await mayLeave(desk, notebook.about.title))) {
    desk.open(notebook);
    desk.say(say`${file.name} is open. Answer the tasks, save your answers, and hand that file to your trainer.`);
  }
  return true;
}
