import { say } from "../words/say";
import { isOptionPage, type Notebook, optionsOf, type Page } from "./model";
import { Refusal } from "./refusal";

/** Names of the free sheet with the offsets of an option, the first that is there: its own, or one for all alike. */
export const offsetsNames = (option: string): readonly string[] => [`Offsets ${option}`, "Offsets"];

/** Holds a sheet of offsets to names by which it is found. @throws Refusal for another name. */
export function checkOffsetsName(notebook: Notebook, page: Page, name: string): void {
  const names = optionsOf(notebook).flatMap(offsetsNames);
  const isOne = (wanted: string) => names.some((one) => one.toLowerCase() === wanted.toLowerCase());
  if (isOptionPage(page) || !isOne(page.name) || isOne(name)) return;
  throw new Refusal(
    say`${page.name}: cut lines are drawn from the page of this name; it may be called Offsets, or Offsets with the name of an option.`,
  );
}
