import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import { say } from "../../words/say";
import type { Entry } from "./journal";
import type { Snapshot } from "./snapshot";

/** The newest form of the stored data that this program knows. A change of form adds one and a step in `upgrade`. */
const schemaVersion = 1;

/** A state that the person gave a name. */
export interface Version {
  readonly number: number;
  readonly name: string;
  readonly when: number;
  /** Characters. */
  readonly size: number;
}

/** Where the person was: file of the page, row and column from 0. */
export interface Place {
  readonly page: string;
  readonly row: number;
  readonly column: number;
}

/** What is kept of a notebook beside its journal. Times in milliseconds of the computer's clock. */
export interface NotebookRecord {
  readonly id: string;
  readonly title: string;
  readonly pages: number;
  readonly created: number;
  readonly changed: number;
  readonly opened: number;
  readonly deleted?: number;
  /** Characters, close to the room that they take. */
  readonly sizes: { readonly base: number; readonly check: number; readonly journal: number };
  /** The last entry, and those after which the snapshots "base" and "check" stand. */
  readonly last: number;
  readonly base: number;
  readonly check: number;
  readonly versions: readonly Version[];
  readonly place?: Place;
  /** The window that may write; another one that finds its name no longer here has been replaced. */
  readonly holder: string;
}

/** "base": where the journal begins. "check": a later state, should the journal be damaged. Else a named version. */
export type SnapshotKey = "base" | "check" | number;

export interface Schema extends DBSchema {
  notebooks: { key: string; value: NotebookRecord };
  journal: { key: [string, number]; value: Entry & { readonly notebook: string } };
  snapshots: {
    key: [string, SnapshotKey];
    value: { readonly notebook: string; readonly key: SnapshotKey; readonly state: Snapshot };
  };
}

export type Database = IDBPDatabase<Schema>;

const notThere = say`This browser keeps no notebooks here (private window or blocked storage): save to a file.`;
const newer = say`The notebooks kept in this browser were written by a newer version of this program: reload the page to get it, or save to a file.`;

const silent = say`The browser's database does not answer, perhaps because another window holds it: close other windows of this program and reload, or save to a file.`;

const faultSentence = (cause: unknown): string =>
  cause instanceof Error && cause.name === "VersionError"
    ? newer
    : say`The browser does not open its database (${cause instanceof Error ? cause.message || cause.name : String(cause)}): save to a file.`;

function upgrade(database: Database, from: number): void {
  if (from >= 1) return;
  database.createObjectStore("notebooks", { keyPath: "id" });
  database.createObjectStore("journal", { keyPath: ["notebook", "seq"] });
  database.createObjectStore("snapshots", { keyPath: ["notebook", "key"] });
}

interface Refused {
  readonly refused: string;
}

/** So long the browser may take, and other windows may hold it up (milliseconds). They are asked to let go at once. */
const patience = 5000;

/**
 * Opens the browser's database.
 *
 * @param closed is called when the database is closed from outside: by a newer version of the program in another
 * window (which waits until then), or by the browser.
 * @returns the database, or the sentence that says why there is none.
 */
export async function openDatabase(name: string, closed: () => void): Promise<Database | Refused> {
  if (typeof indexedDB === "undefined") return { refused: notThere };
  let timer: ReturnType<typeof setTimeout> | undefined;
  const tooLong = new Promise<Refused>((done) => {
    timer = setTimeout(() => done({ refused: silent }), patience);
  });
  try {
    const opening = openDB<Schema>(name, schemaVersion, {
      upgrade,
      blocking: (_mine, _theirs, event) => {
        (event.target as IDBDatabase).close();
        closed();
      },
      terminated: closed,
    });
    const first = await Promise.race([opening, tooLong]);
    if ("refused" in first) opening.then((late) => late.close()).catch(() => undefined);
    return first;
  } catch (cause) {
    return { refused: faultSentence(cause) };
  } finally {
    clearTimeout(timer);
  }
}
