import type { Step } from "../../notebook/history";
import { pageById } from "../../notebook/model";
import { say } from "../../words/say";
import type { Block } from "../block";
import type { Desk } from "../desk";

/** Shows where a step happened: its page, its cells. */
function show(desk: Desk, step: Step | undefined, said: string, nothing: string): void {
  if (!step) {
    desk.say(nothing);
    return;
  }
  const [first, last = first] = step.at;
  if (first && last && pageById(desk.notebook, first.page)) {
    const block: Block = { from: { row: first.row, column: first.column }, to: { row: last.row, column: last.column } };
    desk.select(block, first.page);
  }
  const page = first && pageById(desk.notebook, first.page);
  desk.say(`${said}: ${step.label}${page ? say`, on ${page.name}` : ""}.`);
}

/** Takes the last step back and shows where it was. */
export const undo = (desk: Desk): void => {
  if (desk.closed === undefined) show(desk, desk.live?.undo(), say`Undone`, say`Nothing to undo.`);
  else desk.say(desk.closed, "refused");
};

/** Does the step again that was taken back last. */
export const redo = (desk: Desk): void => {
  if (desk.closed === undefined) show(desk, desk.live?.redo(), say`Redone`, say`Nothing to redo.`);
  else desk.say(desk.closed, "refused");
};
