import type { AnyDefinition } from "../formula/definition";
import { catalogue } from "../functions";

/** Finds a named function; the shipped ones and a notebook's own are looked up alike. */
export type FindFunction = (name: string) => AnyDefinition | undefined;

const shipped = new Map(catalogue.map((definition) => [definition.name as string, definition]));

/** Finds a shipped function by its name. */
export const shippedFunction: FindFunction = (name) => shipped.get(name);
