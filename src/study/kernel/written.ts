import type { Answer } from "../../formula/value";
import type { Plain } from "./plain";

/** A named function as plain code: the values in the order of its definition, NaN where it refuses. */
export type Written = (...given: readonly (Plain | readonly Plain[])[]) => Answer;

/**
 * The named functions as plain code, by name, for kernels that may not compile text. The build writes them here from
 * their definitions (`writtenModule`, called by vite.config.ts); where nothing was built the map stays empty, and
 * kernels take the functions' own steps, which give the same bits in more time.
 */
export const written: ReadonlyMap<string, Written> = new Map();
