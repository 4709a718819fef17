/** Which arguments are branches, by their place and by how many there are; the engine's other functions have none. */
const branchesOf: ReadonlyMap<string, (argument: number, count: number) => boolean> = new Map([
  ["IF", (argument) => argument > 0],
  ["IFS", (argument) => argument % 2 === 1],
  ["CHOOSE", (argument) => argument > 0],
  ["SWITCH", (argument, count) => argument > 0 && (argument % 2 === 0 || argument === count - 1)],
  // The first argument is always worked out: its error decides.
  ["IFERROR", (argument) => argument === 1],
  ["IFNA", (argument) => argument === 1],
]);

/** Functions whose first argument decides by failing, with the question whether it does. */
export const asksFailure: ReadonlyMap<string, string> = new Map([
  ["IFERROR", "ISERROR"],
  ["IFNA", "ISNA"],
]);

/**
 * Whether an argument of a function is a branch: a value that comes out when it is chosen, and counts for nothing
 * when it is not. Conditions are no branches, and neither is anything in AND and OR: an error in any of them, behind
 * the one that decides too, is the error of the whole.
 *
 * @param argument from 0.
 * @param count how many arguments the call has.
 */
export const isBranch = (name: string, argument: number, count: number): boolean =>
  branchesOf.get(name)?.(argument, count) ?? false;
