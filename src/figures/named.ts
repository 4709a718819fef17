import { callFunction, inOrder } from "../formula/call";
import type { AnyDefinition } from "../formula/definition";

/** The number that a named function gives for arguments by name. @throws Fault as the function does. */
export const named = (definition: AnyDefinition, given: Readonly<Record<string, number | string | boolean>>): number =>
  Number(callFunction(definition, inOrder(definition, given)));
