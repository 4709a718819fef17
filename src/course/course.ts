import type { Notebook } from "../notebook/model";
import { Refusal } from "../notebook/refusal";
import { say } from "../words/say";
import { taskKind } from "./kinds";
import { readTask } from "./read-task";
import type { Task } from "./task";

/** A course: the task pages of a notebook, in its order. */
export interface Course {
  readonly title: string;
  /** Goes into every draw: another edition gives every trainee other numbers. */
  readonly edition: string;
  readonly tasks: readonly Task[];
  /** Files of the tasks whose working the trainer has released. */
  readonly released: ReadonlySet<string>;
}

/** Reads the course in a notebook: its pages of the kind *task*. @throws Refusal for none, or one that cannot be read. */
export function readCourse(notebook: Notebook): Course {
  const { about, pages } = notebook;
  const isTask = new Set(about.pages.filter((entry) => entry.kind === taskKind).map(({ file }) => file));
  const found = pages.filter(({ file }) => isTask.has(file));
  if (found.length === 0) {
    throw new Refusal(
      say`"${about.title}" has no tasks; give a page in notebook.json the field "kind": "${taskKind}".`,
    );
  }
  const edition = about.settings?.edition;
  return {
    title: about.title,
    edition: typeof edition === "string" || typeof edition === "number" ? String(edition) : "",
    tasks: found.map((page, i) => readTask(page, i + 1)),
    released: new Set(releasedIn(notebook)),
  };
}

/** `settings.released` of notebook.json: files of tasks; whatever else it may hold releases nothing. */
function releasedIn({ about }: Notebook): readonly string[] {
  const list = about.settings?.released;
  return Array.isArray(list) ? list.filter((file) => typeof file === "string") : [];
}

/** The notebook with the working of a task released, or held back again. */
export function release(notebook: Notebook, file: string, isReleased: boolean): Notebook {
  const others = releasedIn(notebook).filter((one) => one !== file);
  const { released: _, ...settings } = notebook.about.settings ?? {};
  const released = isReleased ? [...others, file].sort() : others;
  const about = { ...notebook.about, settings: released.length > 0 ? { ...settings, released } : settings };
  return { ...notebook, about };
}

/**
 * A task of a file that was handed out: by its title, since the number is another one when tasks were moved or removed;
 * by its number where the title is another one now. What is in the course under neither is asked for by its title.
 *
 * @param titles of all tasks in the file, by number.
 * @throws Refusal when neither is left in the course.
 */
export function taskHandedOut(course: Course, number: string, titles: ReadonlyMap<string | undefined, string>): Task {
  const title = titles.get(number) ?? "";
  const there = course.tasks.find((task) => String(task.number) === number.trim());
  const isGone = there === undefined || [...titles.values()].some((one) => isCalled(there, one));
  const isKnown = course.tasks.some((task) => isCalled(task, title));
  return taskBy(course, title !== "" && (isKnown || isGone) ? title : number);
}

const isCalled = ({ title }: Task, wanted: string): boolean => title.toLowerCase() === wanted.trim().toLowerCase();

/** The task with a number or a title. @throws Refusal that says which there are. */
export function taskBy(course: Course, wanted: string): Task {
  const task = course.tasks.find((one) => String(one.number) === wanted.trim() || isCalled(one, wanted));
  if (task) return task;
  const there = course.tasks.map(({ number, title }) => `${number} ${title}`).join(", ");
  throw new Refusal(say`There is no task "${wanted}" (there are ${there}).`);
}
