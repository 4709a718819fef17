/** What the keeping needs of the browser; a part that is missing is undefined and its work is done in another way. */
export interface Around {
  /** Name of the database. */
  readonly database: string;
  readonly locks: LockManager | undefined;
  /** Opens the line on which the windows of this browser talk. */
  readonly channel: ((name: string) => BroadcastChannel) | undefined;
  readonly storage: StorageManager | undefined;
  /** Milliseconds of the computer's clock. */
  readonly now: () => number;
}

export function browserAround(): Around {
  // Outside of a secure page some of these are not there, whatever the types say.
  const found: Partial<Pick<Navigator, "locks" | "storage">> = globalThis.navigator ?? {};
  return {
    database: "athwart",
    locks: found.locks,
    channel: typeof BroadcastChannel === "undefined" ? undefined : (name) => new BroadcastChannel(name),
    storage: found.storage,
    now: Date.now,
  };
}
