import { html, nothing, type TemplateResult } from "lit/html.js";
import { askedKind, taskKind } from "../../course/kinds";
import { holdsTasks, keepTasksUnread } from "../../course/trainee-side";
import type { Page } from "../../notebook/model";
import { say } from "../../words/say";
import { inBackground } from "../background";
import type { Desk } from "../desk";
import type { TaskPages } from "./task-pages";

/** Task pages on the screen: which side of them is shown, the trainee's or the trainer's. */
export class Tasks {
  private pages: TaskPages | undefined;
  private isFetching = false;
  private isTrainer = false;

  constructor(
    private readonly desk: Desk,
    private readonly update: () => void,
  ) {
    desk.bounds = () =>
      this.isTraineeSide
        ? {
            save: say`The course is saved from the trainer's side, because its solutions are in it. Your answers are saved on the page of a task, with Save my answers.`,
            hold: keepTasksUnread,
          }
        : undefined;
    desk.subscribe(({ kind }) => {
      // The trainer's side is entered on purpose, for every notebook anew.
      if (kind === "opened") this.isTrainer = false;
    });
  }

  /** Whether the open notebook holds tasks and its solutions are to stay out of sight. */
  get isTraineeSide(): boolean {
    return !this.isTrainer && holdsTasks(this.desk.notebook);
  }

  /** Whether the pages stay as they are: on the trainee's side, and in a file that a trainee was handed. */
  get keepsPages(): boolean {
    return this.isTraineeSide || this.desk.notebook.about.pages.some(({ kind }) => kind === askedKind);
  }

  /** Whether a page is shown as a task to be worked, and not as cells. */
  shows(page: Page): boolean {
    const kind = this.kindOf(page);
    return kind === askedKind || (kind === taskKind && !this.isTrainer);
  }

  main(page: Page): TemplateResult {
    const pages = this.fetched();
    if (!pages || !this.desk.live) return html`<p class="soft" id="task">${say`Laying out the task …`}</p>`;
    return this.kindOf(page) === askedKind ? pages.asked(page) : pages.task(page);
  }

  /** What stands at the right of a task: its rule, and what may not be concluded from it. */
  side(page: Page): TemplateResult | typeof nothing {
    const pages = this.desk.live && this.fetched();
    return pages ? pages.side(page, this.kindOf(page) === askedKind) : nothing;
  }

  /** The way to the other side, where the notebook holds a course. */
  tools(): TemplateResult | typeof nothing {
    const { desk } = this;
    if (!holdsTasks(desk.notebook)) return nothing;
    const enter = async () => {
      const { askTrainer } = await import("./ask-trainer");
      if (await askTrainer()) this.turn(true);
    };
    const openClass = async () => {
      const { openClass: open } = await import("./class-dialog");
      await open(desk);
    };
    return html`<div class="tools" role="group" aria-label=${say`Course`}>
      ${
        this.isTrainer
          ? html`<button type="button" ?disabled=${!desk.live} aria-haspopup="dialog" @click=${() => inBackground(openClass())}>${say`Class and marks …`}</button>
            <button type="button" @click=${() => this.turn(false)}>${say`Back to the trainee's side`}</button>`
          : html`<button type="button" aria-haspopup="dialog" @click=${() => inBackground(enter())}>${say`Trainer's side …`}</button>`
      }
    </div>`;
  }

  private turn(isTrainer: boolean): void {
    this.isTrainer = isTrainer;
    this.desk.say(
      isTrainer
        ? say`This is the trainer's side: task pages are cells.`
        : say`This is the trainee's side: task pages are tasks.`,
    );
    this.update();
  }

  private kindOf(page: Page): unknown {
    return this.desk.notebook.about.pages.find(({ file }) => file === page.file)?.kind;
  }

  /** What draws a task needs the named functions; it is fetched when the first task is shown. */
  private fetched(): TaskPages | undefined {
    if (!this.pages && !this.isFetching) {
      this.isFetching = true;
      inBackground(
        import("./task-pages").then(({ TaskPages: Pages }) => {
          this.pages = new Pages(this.desk, this.update);
          this.update();
        }),
      );
    }
    return this.pages;
  }
}
