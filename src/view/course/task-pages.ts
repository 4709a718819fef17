import { html, nothing, type TemplateResult } from "lit/html.js";
import { type AskedTask, askedOf } from "../../course/asked-task";
import { type Course, readCourse } from "../../course/course";
import { type Numbers, numbersFor } from "../../course/numbers";
import type { Task } from "../../course/task";
import { askedOn } from "../../course/trainee-notebook";
import type { Notebook, Page } from "../../notebook/model";
import { Refusal } from "../../notebook/refusal";
import { say } from "../../words/say";
import type { Desk } from "../desk";
import { cornerMark } from "../marks";
import { askedPage } from "./asked-page";
import { taught } from "./asked-task";
import { focusWhenDrawn } from "./focus-when-drawn";
import { Hints } from "./hints";
import { TaskWork } from "./task-work";
import { traineeForm } from "./trainee-form";
import { TraineeMemory } from "./trainee-memory";

/** A task page of a course as it stands for the trainee who works here. */
interface Open {
  readonly course: Course;
  readonly task: Task;
  readonly numbers: Numbers;
  readonly asked: AskedTask;
}

/** Draws task pages: those of a course, with marking, and those of a trainee's file, without. */
export class TaskPages {
  private readonly memory = new TraineeMemory();
  /** Hints taken to the tasks of a trainee's file, by page id. */
  private readonly hints = new Map<string, Hints>();
  private isAskingTrainee = false;
  private readonly works = new Map<string, TaskWork>();
  private read: { readonly notebook: Notebook; readonly course: Course | Refusal } | undefined;
  private drawn: { readonly course: Course; readonly key: string; readonly open: Open } | undefined;

  constructor(
    private readonly desk: Desk,
    private readonly update: () => void,
  ) {}

  asked(page: Page): TemplateResult {
    const hints = this.hints.get(page.id) ?? new Hints(this.update);
    this.hints.set(page.id, hints);
    return askedPage(this.desk, page, askedOn(page), hints);
  }

  task(page: Page): TemplateResult {
    if (this.memory.trainee === "" || this.isAskingTrainee) {
      return traineeForm(this.memory, () => {
        this.isAskingTrainee = false;
        this.update();
      });
    }
    const open = this.open(page);
    if (open instanceof Refusal) return html`<p class="short" id="task">${cornerMark} ${open.message}</p>`;
    const { course, task, numbers, asked } = open;
    const change = () => {
      this.isAskingTrainee = true;
      this.update();
      focusWhenDrawn("#trainee");
    };
    return this.work(course, task, numbers).show(
      course,
      numbers,
      asked,
      html`<p class="whose">${say`Task ${task.number} of ${course.tasks.length}. Numbers of trainee`} <b>${numbers.trainee}</b>. <button type="button" class="quiet" @click=${change}>${say`Another trainee`}</button></p>`,
    );
  }

  side(page: Page, isAsked: boolean): TemplateResult | typeof nothing {
    if (isAsked) return taught(askedOn(page));
    const open = this.memory.trainee === "" ? undefined : this.open(page);
    return open === undefined || open instanceof Refusal ? nothing : taught(open.asked);
  }

  private work(course: Course, task: Task, { trainee }: Numbers): TaskWork {
    const key = [course.title, course.edition, trainee, task.file].join("\n");
    const known = this.works.get(key) ?? new TaskWork(key, this.memory, this.desk, this.update);
    this.works.set(key, known);
    return known;
  }

  private open(page: Page): Open | Refusal {
    const course = this.course();
    if (course instanceof Refusal) return course;
    const key = `${page.file}\n${this.memory.trainee}`;
    if (this.drawn?.course === course && this.drawn.key === key) return this.drawn.open;
    const task = course.tasks.find(({ file }) => file === page.file);
    if (!task) return new Refusal(say`${page.file} is no task of this course.`);
    return refusalOf(() => {
      const numbers = numbersFor(course, task, this.memory.trainee);
      const open = { course, task, numbers, asked: askedOf(numbers) };
      this.drawn = { course, key, open };
      return open;
    });
  }

  private course(): Course | Refusal {
    const { notebook } = this.desk;
    if (this.read?.notebook !== notebook) this.read = { notebook, course: refusalOf(() => readCourse(notebook)) };
    return this.read.course;
  }
}

function refusalOf<T>(make: () => T): T | Refusal {
  try {
    return make();
  } catch (problem) {
    if (problem instanceof Refusal) return problem;
    throw problem;
  }
}
