import { deleteDB, openDB } from "idb";
import { afterEach, describe, expect, it, vi } from "vitest";
import { setCells } from "../../../src/notebook/edit-cells";
import { setNote } from "../../../src/notebook/edit-note";
import { removePage } from "../../../src/notebook/edit-pages";
import { writeNotebook } from "../../../src/notebook/files";
import type { Around } from "../../../src/notebook/keeping/around";
import { backTo } from "../../../src/notebook/keeping/back-to";
import { type Keeping, openKeeping } from "../../../src/notebook/keeping/keeping";
import type { Kept } from "../../../src/notebook/keeping/kept";
import { LiveNotebook } from "../../../src/notebook/live";
import type { Notebook } from "../../../src/notebook/model";
import { Refusal } from "../../../src/notebook/refusal";
import { small } from "./deeds";
import { newBrowser, openWindow } from "./open";

const filesOf = (notebook: Notebook) => [...writeNotebook(notebook)];

const windows: Keeping[] = [];
async function open(around: Around): Promise<Keeping> {
  const keeping = await openWindow(around);
  windows.push(keeping);
  return keeping;
}

afterEach(async () => {
  vi.restoreAllMocks();
  for (const window of windows.splice(0)) await window.close();
});

function live(kept: Kept): LiveNotebook {
  const one = new LiveNotebook(kept.notebook, kept.history);
  kept.attach(one);
  return one;
}

/** Types into E2 of the first page: the length of the run. */
const type = (one: LiveNotebook, text: string) =>
  one.apply(`run ${text}`, (notebook) =>
    setCells(notebook, [{ page: notebook.pages[0]?.id ?? "", row: 1, column: 4, text }]),
  );
const typed = ({ pages }: Notebook) => pages[0]?.rows[1]?.[4];

/** The browser's disk is full until it is called again. */
function fillDisk(): () => void {
  const full = vi.spyOn(IDBObjectStore.prototype, "put").mockImplementation(() => {
    throw new DOMException("The quota has been exceeded.", "QuotaExceededError");
  });
  return () => full.mockRestore();
}

describe("a kept notebook", () => {
  it("is there after a reload with its last change and its history, unsaved files byte for byte", async () => {
    const browser = newBrowser();
    const first = await open(browser);
    const kept = await first.add(small());
    const before = live(kept);
    type(before, "11");
    before.apply("note", (notebook) => setNote(notebook, "Supply", "Measured twice."));
    type(before, "13");
    before.undo();
    await kept.flush();
    expect(kept.standing).toEqual({ kind: "kept" });
    await first.close();

    const second = await open(browser);
    const again = await second.open((await second.lastOpened()) ?? "");
    expect(filesOf(again.notebook)).toEqual(filesOf(before.notebook));
    const after = live(again);
    expect(after.steps).toEqual({ undo: "note", redo: "run 13" });
    after.redo();
    expect(typed(after.notebook)).toBe("13");
    for (const _ of [1, 2, 3]) after.undo();
    expect(filesOf(after.notebook)).toEqual(filesOf(small()));
    expect(after.undo()).toBeUndefined();
  });

  it("is in the database without waiting to be closed: a window that simply ends loses nothing that was flushed", async () => {
    const browser = newBrowser();
    const kept = await (await open(browser)).add(small());
    type(live(kept), "11");
    await kept.flush();
    // The first window is never closed; what it holds of the lock goes with it.
    const second = await open({ ...browser, locks: undefined, channel: undefined });
    expect(typed((await second.open(kept.id)).notebook)).toBe("11");
  });

  it("is written within a second of the change, without being asked to", async () => {
    const browser = newBrowser();
    const kept = await (await open(browser)).add(small());
    const one = live(kept);
    const stands: string[] = [];
    kept.subscribe(() => stands.push(kept.standing.kind));
    const began = performance.now();
    for (const text of ["11", "12", "13"]) type(one, text);
    await vi.waitFor(() => expect(kept.standing.kind).toBe("kept"), { interval: 5 });
    expect(performance.now() - began).toBeLessThan(1000);
    expect(stands).toEqual(["keeping", "kept"]);
    expect((await kept.states()).map(({ label }) => label)).toEqual([
      "run 13",
      "run 12",
      "run 11",
      "as it was at the start",
    ]);
  });

  it("is opened where the person was", async () => {
    const browser = newBrowser();
    const first = await open(browser);
    const kept = await first.add(small());
    kept.remember({ page: "free.csv", row: 1, column: 1 });
    await first.close();
    expect((await (await open(browser)).open(kept.id)).place).toEqual({ page: "free.csv", row: 1, column: 1 });
  });

  it("goes back to any of its last 50 states, those on a path that was left too, as a step that can be taken back", async () => {
    const kept = await (await open(newBrowser())).add(small());
    const one = live(kept);
    for (let i = 0; i < 60; i++) type(one, `1${i}`);
    one.undo();
    one.apply("page", (notebook) => removePage(notebook, notebook.pages[1]?.id ?? ""));
    const files = filesOf(one.notebook);
    const states = await kept.states();
    expect(states).toHaveLength(50);
    const [page, undo, last] = states;
    expect([page?.label, undo?.way, last?.label]).toEqual(["page", "undo", "run 159"]);
    const wanted = await kept.stateAt(last?.seq ?? 0);
    expect(one.apply("earlier state", backTo(wanted))).toBe(true);
    expect(typed(one.notebook)).toBe("159");
    expect(one.notebook.pages).toHaveLength(3);
    expect(filesOf(one.notebook)).toEqual(filesOf(wanted));
    one.undo();
    expect(filesOf(one.notebook)).toEqual(files);
    expect(one.apply("same state", backTo(one.notebook))).toBe(false);
  });

  it("has named versions that stay when everything else changes", async () => {
    const browser = newBrowser();
    const first = await open(browser);
    const kept = await first.add(small());
    const one = live(kept);
    type(one, "11");
    const offered = await kept.nameVersion(" offered ");
    type(one, "99");
    await kept.nameVersion("ordered");
    await first.close();
    const again = await (await open(browser)).open(kept.id);
    expect(again.versions.map(({ name }) => name)).toEqual(["offered", "ordered"]);
    expect(typed(await again.versionAt(offered.number))).toBe("11");
    await again.dropVersion(offered.number);
    expect(again.versions.map(({ name }) => name)).toEqual(["ordered"]);
    await expect(again.versionAt(offered.number)).rejects.toThrow(Refusal);
    await expect(again.nameVersion("  ")).rejects.toThrow("A version needs a name.");
  });

  it("keeps its journal short however long it is worked on, and still undoes a thousand steps", {
    timeout: 60_000,
  }, async () => {
    const browser = newBrowser();
    const first = await open(browser);
    const kept = await first.add(small());
    const one = live(kept);
    for (let i = 0; i < 4100; i++) {
      type(one, `1${i}`);
      if (i % 500 === 0) await kept.flush();
    }
    await kept.flush();
    expect(await (await openDB(browser.database)).count("journal")).toBeLessThan(1300);
    const files = filesOf(one.notebook);
    await first.close();
    const again = await (await open(browser)).open(kept.id);
    expect(filesOf(again.notebook)).toEqual(files);
    const after = live(again);
    let undone = 0;
    while (after.undo()) undone++;
    expect(undone).toBe(1000);
    expect(typed(after.notebook)).toBe("13099");
  });
});

describe("the notebooks of a browser", () => {
  it("are listed with dates and sizes, deleted, restored as they were, and erased", async () => {
    let now = 1000;
    const keeping = await open(newBrowser({ now: () => ++now }));
    const kept = await keeping.add(small());
    const one = live(kept);
    type(one, "11");
    await kept.nameVersion("offered");
    const other = await keeping.add(small());
    const sizes = new Map((await keeping.list()).map(({ id, size }) => [id, size]));
    expect([...sizes.keys()]).toEqual([other.id, kept.id]);
    expect(sizes.get(kept.id)).toBeGreaterThan(2 * (sizes.get(other.id) ?? 0));

    await keeping.remove(kept.id);
    await expect(keeping.open(kept.id)).rejects.toThrow('"Small" is deleted; restore it first.');
    const [, deleted] = await keeping.list();
    expect(deleted).toMatchObject({ id: kept.id, title: "Small", versions: 1 });
    expect(deleted?.deleted).toBeGreaterThan(1000);
    expect(await keeping.lastOpened()).toBe(other.id);

    await keeping.restore(kept.id);
    const again = await keeping.open(kept.id);
    expect(typed(again.notebook)).toBe("11");
    expect(live(again).steps.undo).toBe("run 11");

    await expect(keeping.erase(kept.id)).rejects.toThrow("is not deleted; delete it first.");
    await keeping.remove(kept.id);
    await keeping.erase(kept.id);
    expect((await keeping.list()).map(({ id }) => id)).toEqual([other.id]);
    await expect(keeping.open(kept.id)).rejects.toThrow("no longer kept in this browser");
  });

  it("are erased 30 days after they were deleted", async () => {
    let now = 1000;
    const browser = newBrowser({ now: () => now });
    const first = await open(browser);
    const { id } = await first.add(small());
    await first.remove(id);
    now += 29 * 24 * 3600 * 1000;
    const second = await open(browser);
    expect(await second.list()).toHaveLength(1);
    now += 2 * 24 * 3600 * 1000;
    expect(await (await open(browser)).list()).toHaveLength(0);
  });

  it("are asked to be kept for good, and their room is told", async () => {
    const storage = {
      persist: async () => true,
      persisted: async () => true,
      estimate: async () => ({ usage: 5, quota: 100 }),
    } as StorageManager;
    const keeping = await open(newBrowser({ storage }));
    expect(await keeping.persist()).toBe(true);
    expect(await keeping.room()).toEqual({ used: 5, most: 100, isLasting: true });
    const silent = await open(newBrowser());
    expect(await silent.persist()).toBe(false);
    expect(await silent.room()).toBeUndefined();
  });
});

describe("two windows on one notebook", () => {
  it.each([
    ["with the browser's locks", {}],
    ["without them", { locks: undefined }],
  ])("%s: the second is told and reads, follows, and takes over knowingly", async (_, changes) => {
    const browser = newBrowser(changes);
    const [first, second] = [await open(browser), await open(browser)];
    const mine = await first.add(small());
    const one = live(mine);
    const theirs = await second.open(mine.id);
    expect(theirs.writes).toBe(false);
    expect(theirs.standing).toMatchObject({ kind: "reads", behind: false });
    await expect(theirs.nameVersion("mine")).rejects.toThrow("open in another window");
    await expect(second.remove(mine.id)).rejects.toThrow("open in another window");

    type(one, "11");
    await vi.waitFor(() => expect(theirs.standing).toMatchObject({ kind: "reads", behind: true }));
    expect(typed(await theirs.reread())).toBe("11");
    expect(theirs.standing).toMatchObject({ behind: false });

    // Not yet written when the other window takes over; it must be there all the same.
    type(one, "12");
    const taken = await second.open(mine.id, true);
    expect(typed(taken.notebook)).toBe("12");
    expect(taken.writes).toBe(true);
    expect(mine.writes).toBe(false);
    expect(mine.standing).toMatchObject({ kind: "taken", waiting: 0 });
    const two = live(taken);
    expect(two.steps.undo).toBe("run 12");
    type(one, "77");
    expect(mine.standing).toMatchObject({ kind: "taken", waiting: 1 });
    type(two, "13");
    expect(await taken.flush()).toBe(true);
    expect(await mine.flush()).toBe(false);
    expect(typed(await taken.stateAt((await taken.states())[0]?.seq ?? 0))).toBe("13");
  });

  it("a window that hangs is overruled, and cannot write any more when it wakes", async () => {
    const browser = newBrowser();
    const first = await open({ ...browser, channel: undefined });
    const mine = await first.add(small());
    const one = live(mine);
    const second = await open({ ...browser, channel: undefined });
    const taken = await second.open(mine.id, true);
    expect(taken.writes).toBe(true);
    type(one, "11");
    await mine.flush();
    expect(mine.standing).toMatchObject({ kind: "taken", waiting: 1 });
    expect(typed(await taken.stateAt(0))).toBe("10");
    expect(await taken.states()).toHaveLength(1);
  });

  it("a window without locks or line finds out from the database at its next change", async () => {
    const browser = newBrowser({ locks: undefined, channel: undefined });
    const mine = await (await open(browser)).add(small());
    const one = live(mine);
    const taken = await (await open(browser)).open(mine.id);
    type(one, "11");
    await mine.flush();
    expect(mine.standing).toMatchObject({ kind: "taken", waiting: 1 });
    expect(taken.writes).toBe(true);
  });

  it("the first one closed, the second writes", async () => {
    const browser = newBrowser();
    const [first, second] = [await open(browser), await open(browser)];
    const { id } = await first.add(small());
    await first.close();
    expect((await second.open(id)).writes).toBe(true);
  });
});

describe("a database that does not do its part", () => {
  it("is full: said at once, the work goes on in memory, and is kept when there is room again", async () => {
    const keeping = await open(newBrowser());
    const kept = await keeping.add(small());
    const one = live(kept);
    const empty = fillDisk();
    type(one, "11");
    await kept.flush();
    expect(kept.standing).toMatchObject({ kind: "refused", waiting: 1 });
    expect(kept.standing).toHaveProperty("sentence", expect.stringContaining("no room left"));
    type(one, "12");
    expect(one.steps.undo).toBe("run 12");
    await kept.flush();
    expect(kept.standing).toMatchObject({ kind: "refused", waiting: 2 });
    await expect(kept.nameVersion("now")).rejects.toThrow("quota");
    empty();
    expect(await kept.flush()).toBe(true);
    expect(kept.standing).toEqual({ kind: "kept" });
    expect((await kept.states()).map(({ label }) => label).slice(0, 2)).toEqual(["run 12", "run 11"]);
  });

  it("is full when a notebook is added: nothing of it stays behind", async () => {
    const keeping = await open(newBrowser());
    const empty = fillDisk();
    await expect(keeping.add(small())).rejects.toThrow("quota");
    empty();
    expect(await keeping.list()).toEqual([]);
  });

  it("is not there, as in a private window: a sentence instead", async () => {
    vi.stubGlobal("indexedDB", undefined);
    const keeping = await openKeeping(newBrowser());
    vi.unstubAllGlobals();
    expect(keeping).toHaveProperty("refused", expect.stringContaining("keeps no notebooks here"));
  });

  it("refuses to open: the reason in a sentence", async () => {
    vi.spyOn(IDBFactory.prototype, "open").mockImplementation(() => {
      throw new DOMException("The user denied permission.", "SecurityError");
    });
    expect(await openKeeping(newBrowser())).toHaveProperty(
      "refused",
      expect.stringContaining("The user denied permission."),
    );
  });

  it("was written by a newer version: refused, and left as it is", async () => {
    const browser = newBrowser();
    const newer = await openDB(browser.database, 2, {
      upgrade: (database) => database.createObjectStore("future") && undefined,
    });
    newer.close();
    expect(await openKeeping(browser)).toHaveProperty("refused", expect.stringContaining("written by a newer version"));
    const left = await openDB(browser.database);
    expect([...left.objectStoreNames]).toEqual(["future"]);
    left.close();
  });

  it("is wanted by a newer version in another window: it lets go and says so", async () => {
    const browser = newBrowser();
    const kept = await (await open(browser)).add(small());
    const one = live(kept);
    const newer = await openDB(browser.database, 2);
    newer.close();
    expect(kept.standing).toMatchObject({ kind: "refused", sentence: expect.stringContaining("newer version") });
    type(one, "11");
    expect(kept.standing).toMatchObject({ kind: "refused", waiting: 1 });
  });

  it("is held by another window that does not let go: said after some seconds", async () => {
    const browser = newBrowser();
    const old = await openDB(browser.database, 1);
    const deleting = deleteDB(browser.database);
    vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
    const opening = openKeeping(browser);
    await vi.advanceTimersByTimeAsync(5000);
    vi.useRealTimers();
    expect(await opening).toHaveProperty("refused", expect.stringContaining("another window holds it"));
    old.close();
    await deleting;
  });

  it("lost an entry in the middle: the later of the two states that can be reached is opened, and it is said", async () => {
    const browser = newBrowser();
    const first = await open(browser);
    const kept = await first.add(small());
    const one = live(kept);
    for (let i = 0; i < 250; i++) {
      type(one, `1${i}`);
      if (i === 199) await kept.flush();
    }
    await first.close();
    const database = await openDB(browser.database);
    await database.delete("journal", [kept.id, 100]);
    database.close();
    const second = await open(browser);
    const again = await second.open(kept.id);
    expect(again.mended).toContain("is whole");
    expect(typed(again.notebook)).toBe("1249");
    const after = live(again);
    type(after, "new");
    await second.close();
    const third = await (await open(browser)).open(kept.id);
    expect(third.mended).toBeUndefined();
    expect(typed(third.notebook)).toBe("new");
    expect(live(third).steps.undo).toBe("run new");
  });

  it("holds nonsense in its last entry: all before it is opened, and it is said", async () => {
    const browser = newBrowser();
    const first = await open(browser);
    const kept = await first.add(small());
    const one = live(kept);
    for (const text of ["11", "12", "13"]) type(one, text);
    await first.close();
    const database = await openDB(browser.database);
    await database.put("journal", {
      notebook: kept.id,
      seq: 3,
      way: "step",
      label: "x",
      when: 0,
      at: [],
      delta: { pages: [7] },
    });
    database.close();
    const second = await open(browser);
    const again = await second.open(kept.id);
    expect(again.mended).toContain("damaged");
    expect(typed(again.notebook)).toBe("12");
    const after = live(again);
    type(after, "14");
    await second.close();
    expect(typed((await (await open(browser)).open(kept.id)).notebook)).toBe("14");
  });
});
