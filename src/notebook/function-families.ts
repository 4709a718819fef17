import type { AnyDefinition } from "../formula/definition";
import { families } from "../functions";
import type { Notebook } from "./model";

/** Named functions that belong together, under the name by which the trade knows them. */
export interface Family {
  readonly name: string;
  readonly functions: readonly AnyDefinition[];
}

/** Every named function that the cells of a notebook can call, family by family in the order of the job. */
export const familiesOf = (_notebook: Notebook): readonly Family[] =>
  Object.entries(families).map(([name, functions]) => ({ name, functions }));
