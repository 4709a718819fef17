import type { Catalogue } from "../catalogue";
import { screen } from "./screen";

/** German, the formal way, in the words of the yard. */
export const german: Catalogue = { ...screen };
