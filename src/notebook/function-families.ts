import type { AnyDefinition } from "../formula/definition";
import { families } from "../functions";
import type { Notebook } from "./model";
import { ownDefinitions } from "./own/own-functions";

/** Named functions that belong together, under the name by which the trade knows them. */
export interface Family {
  readonly name: string;
  readonly functions: readonly AnyDefinition[];
}

/** Every named function that the cells of a notebook can call: its own, then the shipped ones in the order of the job. */
export function familiesOf(notebook: Notebook): readonly Family[] {
  const own = ownDefinitions(notebook);
  const shipped = Object.entries(families).map(([name, functions]) => ({ name, functions }));
  return own.length > 0 ? [{ name: ownFamily, functions: own }, ...shipped] : shipped;
}

/** What the functions that a notebook defines itself are called together. */
const ownFamily = "The notebook's own";
