// Past 150 lines: what is kept, by whom, and what is said when it cannot be are one state of one window.
import type { Head, Keeping, Room } from "../../notebook/keeping/keeping";
import type { Kept } from "../../notebook/keeping/kept";
import type { Notebook } from "../../notebook/model";
import { Refusal } from "../../notebook/refusal";
import { inBackground } from "../background";
import { one } from "../block";
import type { Desk } from "../desk";
import { refused, safetyOf } from "./safety";

/** Keeps the notebook on the desk in the browser's database, and brings back what was kept. */
export class Keeper {
  private keeping: Keeping | undefined;
  private kept: Kept | undefined;
  private attached: (() => void) | undefined;
  private isOpening = false;
  private hasAsked = false;

  constructor(private readonly desk: Desk) {
    desk.subscribe((happening) => {
      const { kind } = happening;
      if (kind === "calculating") this.attach();
      if (kind === "opened" && !this.isOpening) inBackground(this.adopt());
      if (kind === "page" || kind === "selection") this.remember();
      if (happening.kind === "change") {
        this.persist();
        // The page may have another name now.
        if (happening.change.structure) this.remember();
      }
    });
    document.addEventListener("visibilitychange", () => {
      if (document.visibilityState === "hidden") inBackground(this.flush());
    });
  }

  /** Opens what was kept last, or begins to keep the notebook on the desk; to be called before it is calculated. */
  async begin(): Promise<void> {
    const keeping = await this.database();
    if (!keeping) return;
    const last = await keeping.lastOpened().catch(() => undefined);
    if (last !== undefined) await this.orSay(async () => this.take(await keeping.open(last)));
    if (!this.kept) await this.adopt();
  }

  /** The browser's database, opened when it is not yet; where it is refused, the reason stands as an alarm. */
  private async database(): Promise<Keeping | undefined> {
    if (this.keeping) return this.keeping;
    const { openKeeping } = await import("../../notebook/keeping/keeping");
    const opened = await openKeeping();
    if ("refused" in opened) {
      this.desk.setSafety(refused(opened.refused));
      return undefined;
    }
    this.keeping = opened;
    return opened;
  }

  /** Offers to the database what it does not have yet. @returns whether it has everything. */
  async flush(): Promise<boolean> {
    return (await this.kept?.flush()) ?? false;
  }

  /** The same, after asking once more for a database that was refused. */
  async tryAgain(): Promise<boolean> {
    if ((await this.database()) && !this.kept) await this.adopt();
    return this.flush();
  }

  /** What the browser says of the room for notebooks; undefined where it says nothing. */
  async room(): Promise<Room | undefined> {
    return this.keeping?.room();
  }

  async list(): Promise<readonly Head[]> {
    return (await this.keeping?.list()) ?? [];
  }

  /** The notebook on the desk as it is kept; undefined where the browser keeps nothing. */
  get open(): Kept | undefined {
    return this.kept;
  }

  /** @param takeOver takes it from another window that has it open. */
  async show(id: string, takeOver = false): Promise<void> {
    await this.orSay(async () => {
      if (this.keeping) this.take(await this.keeping.open(id, takeOver));
    });
  }

  async remove(id: string): Promise<void> {
    await this.orSay(async () => this.keeping?.remove(id));
  }

  async restore(id: string): Promise<void> {
    await this.orSay(async () => this.keeping?.restore(id));
  }

  async erase(id: string): Promise<void> {
    await this.orSay(async () => this.keeping?.erase(id));
  }

  /** Keeps a notebook that was put on the desk from elsewhere. */
  private async adopt(): Promise<void> {
    const { keeping, desk } = this;
    if (!keeping) return;
    this.leave();
    try {
      this.take(await keeping.add(desk.notebook));
    } catch (cause) {
      const { refusalSentence } = await import("../../notebook/keeping/standing");
      desk.setSafety(refused(refusalSentence(cause)));
    }
  }

  /** Asks the browser to hold on to what is kept; it may ask the person, so this waits for something worth keeping. */
  private persist(): void {
    if (this.hasAsked || !this.keeping) return;
    this.hasAsked = true;
    inBackground(this.keeping.persist());
  }

  private leave(): void {
    this.attached?.();
    this.attached = undefined;
    this.kept = undefined;
  }

  private take(kept: Kept): void {
    const { desk } = this;
    this.leave();
    this.kept = kept;
    kept.subscribe(() => this.tellSafety());
    if (kept.notebook !== desk.notebook) this.put(kept.notebook, kept);
    else this.attach();
    this.tellSafety();
    const { place } = kept;
    const page = place && desk.notebook.pages.find(({ id, name }) => id === place.page || name === place.page);
    if (place && page) desk.select(one({ row: place.row, column: place.column }), page.id);
    if (kept.mended) desk.say(kept.mended, "refused");
  }

  private put(notebook: Notebook, kept: Kept): void {
    this.isOpening = true;
    try {
      this.desk.open(notebook, kept.history);
    } finally {
      this.isOpening = false;
    }
    this.attach();
  }

  private attach(): void {
    const { live } = this.desk;
    if (!live || !this.kept || this.attached) return;
    this.attached = this.kept.attach(live);
  }

  private remember(): void {
    const { page, block } = this.desk;
    // By name: a page's id is made anew whenever the notebook is opened.
    this.kept?.remember({ page: page.name, row: block.from.row, column: block.from.column });
  }

  private tellSafety(): void {
    if (this.kept) this.desk.setSafety(safetyOf(this.kept.standing));
  }

  private async orSay(what: () => Promise<unknown>): Promise<void> {
    try {
      await what();
    } catch (problem) {
      if (problem instanceof Refusal) this.desk.say(problem.message, "refused");
      else reportError(problem);
    }
  }
}
