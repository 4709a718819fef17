import { isFormula } from "../engine/content";
import type { Notebook } from "../notebook/model";
import { referencesOf } from "../notebook/references";
import { Refusal } from "../notebook/refusal";
import { say } from "../words/say";
import { taskKind } from "./kinds";

/** Whether a notebook holds tasks with their solutions. */
export const holdsTasks = ({ about }: Notebook): boolean => about.pages.some(({ kind }) => kind === taskKind);

/**
 * Holds an edit of the trainee's side to what a trainee may see.
 *
 * @throws Refusal for a new formula that reads a task page: its solution would stand in the cell.
 */
export function keepTasksUnread(before: Notebook, after: Notebook): void {
  const taskFiles = new Set(after.about.pages.filter(({ kind }) => kind === taskKind).map(({ file }) => file));
  const tasks = new Set(after.pages.filter(({ file }) => taskFiles.has(file)).map(({ name }) => name.toLowerCase()));
  for (const page of after.pages) {
    const old = before.pages.find(({ id }) => id === page.id);
    if (old?.rows === page.rows) continue;
    page.rows.forEach((row, r) => {
      row.forEach((text, c) => {
        if (!isFormula(text) || old?.rows[r]?.[c] === text) return;
        const read = referencesOf(text).find((one) => one.page !== undefined && tasks.has(one.page.toLowerCase()));
        if (read)
          throw new Refusal(say`${read.page ?? ""} holds a task: on the trainee's side no formula reads its cells.`);
      });
    });
  }
}
