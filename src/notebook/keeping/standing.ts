import { say } from "../../words/say";

/** How the open notebook stands with the browser's database. Every `sentence` is for the person. */
export type Standing =
  /** Everything is in the database. */
  | { readonly kind: "kept" }
  /** A change is on its way there; it takes milliseconds. */
  | { readonly kind: "keeping" }
  /** The database does not take the changes. The work goes on in memory; offer to save to a file. */
  | { readonly kind: "refused"; readonly sentence: string; readonly waiting: number }
  /** Another window writes this notebook; this one reads. `behind`: that one has changed it since. */
  | { readonly kind: "reads"; readonly sentence: string; readonly behind: boolean }
  /** Another window has taken the notebook over; what is changed here from now on is not kept. */
  | { readonly kind: "taken"; readonly sentence: string; readonly waiting: number };

export const readsSentence = say`This notebook is open in another window, which keeps it; here it can be read, or taken over from there.`;

export const takenSentence = say`Another window has taken this notebook over; changes made here are no longer kept: go on there, or save to a file.`;

export const closedSentence = say`The browser has closed its database, or a newer version of the program needs it: save to a file, then reload the page.`;

const isFull = (cause: unknown): boolean =>
  cause instanceof Error && (cause.name === "QuotaExceededError" || /quota|disk is full|no space/i.test(cause.message));

/** Why the database did not take a change. */
export function refusalSentence(cause: unknown): string {
  if (isFull(cause)) {
    return say`The browser has no room left, so the latest changes are in this window only: save to a file, or erase notebooks that are no longer needed.`;
  }
  const reason = cause instanceof Error ? cause.message || cause.name : String(cause);
  return say`The browser's database did not take the latest changes (${reason}); they are in this window only: save to a file.`;
}
