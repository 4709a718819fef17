import { firstOption } from "../../notebook/model";
import { type UnfoldedCall, unfoldCall } from "../../notebook/unfold";
import { counted, say } from "../../words/say";
import { cellOf, one } from "../block";
import type { Desk } from "../desk";

/**
 * Puts the steps of a function that the selected row calls as rows in its place, as one step.
 *
 * @returns whether it did; else it said why not.
 */
export function unfoldSelected(desk: Desk, name: string | undefined): boolean {
  const { page, block } = desk;
  const { row, column } = cellOf(block);
  const definition = name === undefined ? undefined : desk.live?.find(name);
  if (!definition) {
    desk.say(say`This cell calls no named function that could be unfolded; choose one that does.`, "refused");
    return false;
  }
  let made: UnfoldedCall | undefined;
  const isMade = desk.apply(say`${definition.name} unfolded`, (notebook) => {
    made = unfoldCall(notebook, page.id, row, definition);
    return made.notebook;
  });
  if (!isMade || !made) return false;
  const { first, count, row: now } = made;
  desk.select(one({ row: now, column: Math.max(firstOption, column) }));
  desk.say(
    say`${definition.name} is unfolded into ${counted(count, "row")}, ${first + 1} to ${first + count}; undo brings it back.`,
  );
  return true;
}
