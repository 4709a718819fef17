/** What the page says to a newer version of the program that waits: take over now. */
export type ToWorker = "take over";
