import "fake-indexeddb/auto";
import type { Around } from "../../../src/notebook/keeping/around";
import { type Keeping, openKeeping } from "../../../src/notebook/keeping/keeping";
import { locks as newLocks } from "./locks";

let made = 0;

/** A browser of its own for a test: its windows share the database, the locks and the line. */
export function newBrowser(changes: Partial<Around> = {}): Around {
  const locks = newLocks();
  return {
    database: `test-${++made}`,
    locks,
    channel: (name) => new BroadcastChannel(name),
    storage: undefined,
    now: Date.now,
    ...changes,
  };
}

/** Opens what is kept. @throws Error when it is refused. */
export async function openWindow(around: Around): Promise<Keeping> {
  const keeping = await openKeeping(around);
  if ("refused" in keeping) throw new Error(keeping.refused);
  return keeping;
}
