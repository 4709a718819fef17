import type { Around } from "./around";

/** What the windows of a browser tell one another about a notebook. */
type Message =
  | { readonly kind: "who" | "here" | "wanted" | "given"; readonly notebook: string }
  /** Entries up to `last` are in the database. */
  | { readonly kind: "kept"; readonly notebook: string; readonly last: number }
  /** The list of notebooks has changed. */
  | { readonly kind: "list"; readonly notebook: "" };

/** The line between the windows; without one nobody answers. */
export class Line {
  private readonly channel: BroadcastChannel | undefined;
  private readonly listeners = new Set<(message: Message) => void>();

  constructor(around: Around) {
    this.channel = around.channel?.(around.database);
    this.channel?.addEventListener("message", ({ data }: MessageEvent<Message>) => {
      for (const listener of [...this.listeners]) listener(data);
    });
  }

  say(message: Message): void {
    this.channel?.postMessage(message);
  }

  listen(listener: (message: Message) => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  /** Asks and waits for the answer; false when none comes in time (milliseconds). */
  ask(message: Message, answer: Message["kind"], time: number): Promise<boolean> {
    if (!this.channel) return Promise.resolve(false);
    return new Promise((done) => {
      const end = (came: boolean) => {
        clearTimeout(timer);
        deaf();
        done(came);
      };
      const timer = setTimeout(() => end(false), time);
      const deaf = this.listen(({ kind, notebook }) => {
        if (kind === answer && notebook === message.notebook) end(true);
      });
      this.say(message);
    });
  }

  close(): void {
    this.channel?.close();
  }
}

/** The right of this window to write a notebook, until it is given back or taken away. */
export interface Hold {
  readonly release: () => void;
}

const answerTime = 300;
const givingTime = 2000;

/** A lock of the browser's; undefined when another window has it and it is not to be taken away. */
function lock(locks: LockManager, name: string, steal: boolean, taken: () => void): Promise<Hold | undefined> {
  return new Promise((done, fail) => {
    let held = false;
    const options: LockOptions = steal ? { steal } : { ifAvailable: true };
    locks
      .request(name, options, (granted) => {
        if (!granted) {
          done(undefined);
          return undefined;
        }
        return new Promise<void>((release) => {
          held = true;
          done({ release });
        });
      })
      // A lock that was stolen from us ends so.
      .catch((cause) => (held ? taken() : fail(cause)));
  });
}

/**
 * Asks for the right to write a notebook. One window has it at a time, as far as the browser tells them apart; what
 * decides in the end is the name of the holder in the database.
 *
 * @param force takes it from the window that has it, after asking that one to write what it has not written yet.
 * @param taken is called when another window takes it.
 * @returns undefined when another window has it.
 */
export async function holdNotebook(
  around: Around,
  line: Line,
  notebook: string,
  force: boolean,
  taken: () => void,
): Promise<Hold | undefined> {
  if (force) await line.ask({ kind: "wanted", notebook }, "given", givingTime);
  if (!around.locks) {
    const isHeld = !force && (await line.ask({ kind: "who", notebook }, "here", answerTime));
    return isHeld ? undefined : { release: () => undefined };
  }
  const name = `${around.database}/${notebook}`;
  const free = await lock(around.locks, name, false, taken);
  return free ?? (force ? lock(around.locks, name, true, taken) : undefined);
}
