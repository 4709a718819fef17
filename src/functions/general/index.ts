import type { AnyDefinition } from "../../formula/definition";
import { convert } from "./convert";
import { tableAt } from "./table-at";

/** What every page needs. */
export const general: readonly AnyDefinition[] = [convert, tableAt];
