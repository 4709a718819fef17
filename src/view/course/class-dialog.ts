// Past 150 lines: one dialog whose parts share the class list, the answers and the chosen tasks.

import { html, nothing, type TemplateResult } from "lit/html.js";
import { classFiles } from "../../course/class-files";
import { type ClassEntry, readClassList } from "../../course/class-list";
import { printClassTable } from "../../course/class-table";
import { type Course, readCourse, release } from "../../course/course";
import { numbersFor } from "../../course/numbers";
import { printMarks } from "../../course/results";
import { traineeId } from "../../course/seed";
import { solutionSheet, taskSheet } from "../../course/sheet";
import { sheetsHtml } from "../../course/sheet-print";
import type { Task } from "../../course/task";
import { type MarkedFile, markTraineeFile } from "../../course/trainee-file";
import { Refusal } from "../../notebook/refusal";
import { packFiles } from "../../notebook/zip";
import { listed } from "../../words/isolated";
import { counted, say } from "../../words/say";
import { inBackground } from "../background";
import type { Desk } from "../desk";
import { openDialog } from "../dialogs/dialog";
import { chooseFiles, fileName, handOut } from "../files/hand-out";
import { printDocument } from "../files/print-document";
import { cornerMark } from "../marks";
import { classResults } from "./class-results";

const csv = "text/csv;charset=utf-8";
const tables = ".csv,.tsv,.txt,text/csv,text/tab-separated-values,text/plain";

/** A class and what came back from it, as long as the window is open. */
interface Class {
  entries: readonly ClassEntry[];
  files: readonly MarkedFile[];
}

const classes = new WeakMap<Desk, Class>();

/** What the trainer does with a class: list, files and sheets out, answers in, marks, release of the working. */
class ClassDialog {
  private refusal = "";
  private said = "";
  private of: "this" | "all";
  private hasHints = true;
  private readonly held: Class;

  constructor(
    private readonly desk: Desk,
    private readonly update: () => void,
    private readonly close: () => void,
  ) {
    this.held = classes.get(desk) ?? { entries: [], files: [] };
    classes.set(desk, this.held);
    this.of = this.shownTask(this.course()) ? "this" : "all";
  }

  show(): TemplateResult {
    const course = this.course();
    if (!course) {
      return html`<p class="short" role="alert">${cornerMark} ${this.refusal}</p>
        <div class="choices"><button type="button" class="main" @click=${this.close}>${say`Close`}</button></div>`;
    }
    return html`<p class="soft">${say`The class list and the answers stay in this window and are gone when it is closed; files are all there is.`}</p>
      ${this.refusal ? html`<p class="short" role="alert">${cornerMark} ${this.refusal}</p>` : nothing}
      <p class="holds" role="status">${this.said}</p>
      ${this.list()} ${this.out(course)} ${this.marks(course)} ${this.releases(course)}
      <div class="choices"><button type="button" class="main" @click=${this.close}>${say`Close`}</button></div>`;
  }

  private course(): Course | undefined {
    try {
      return readCourse(this.desk.notebook);
    } catch (problem) {
      if (!(problem instanceof Refusal)) throw problem;
      this.refusal = problem.message;
      return undefined;
    }
  }

  private shownTask(course: Course | undefined): Task | undefined {
    return course?.tasks.find(({ file }) => file === this.desk.page.file);
  }

  /** Does something and says so; a refusal is said in the dialog and changes nothing. */
  private act(what: () => Promise<string> | string): () => void {
    return () => inBackground(this.carryOut(what));
  }

  private async carryOut(what: () => Promise<string> | string): Promise<void> {
    this.refusal = "";
    this.said = "";
    try {
      this.said = await what();
    } catch (problem) {
      if (!(problem instanceof Refusal)) throw problem;
      this.refusal = problem.message;
    }
    this.update();
  }

  private list(): TemplateResult {
    const { held } = this;
    const take = async () => {
      const [file] = await chooseFiles(tables, false);
      if (!file) return "";
      held.entries = readClassList(file.name, new Uint8Array(await file.arrayBuffer()));
      return `${file.name}: ${counted(held.entries.length, "trainee")}.`;
    };
    const add = (event: SubmitEvent) => {
      event.preventDefault();
      const form = event.currentTarget as HTMLFormElement;
      const trainee = traineeId(String(new FormData(form).get("one") ?? ""));
      form.reset();
      if (trainee === "" || held.entries.some((entry) => entry.trainee === trainee)) return;
      held.entries = [...held.entries, { trainee, beside: {} }];
      this.update();
    };
    return html`<h3>${say`Class`}</h3>
      <form class="add" @submit=${add}>
        <button type="button" @click=${this.act(take)}>${say`Take a class list (CSV) …`}</button>
        <label>${say`or one trainee`} <input name="one" autocomplete="off" maxlength="80" /></label>
        <button type="submit">${say`Add`}</button>
      </form>
      <p class="roll">${
        held.entries.length === 0
          ? html`<span class="soft">${say`Nobody yet. A class list is a CSV with a column Trainee; a number for each is enough.`}</span>`
          : html`${counted(held.entries.length, "trainee")}: ${listed(held.entries.map(({ trainee }) => trainee))}`
      }</p>`;
  }

  private chosen(course: Course): readonly Task[] {
    const shown = this.shownTask(course);
    return this.of === "this" && shown ? [shown] : course.tasks;
  }

  private out(course: Course): TemplateResult {
    const { entries } = this.held;
    const tasks = this.chosen(course);
    const shown = this.shownTask(course);
    const isOff = entries.length === 0;
    const stem = fileName(course.title);
    const files = () => {
      const made = classFiles(course, entries, { tasks, hints: this.hasHints ? Number.POSITIVE_INFINITY : 0 });
      const [only] = made;
      if (made.size === 1 && only) handOut(only[0], only[1], csv);
      else handOut(`${stem}-trainees.zip`, packFiles(made), "application/zip");
      return say`${counted(made.size, "file")} saved, without solutions.`;
    };
    const table = () => {
      handOut(`${stem}-numbers-and-answers.csv`, printClassTable(course, entries, tasks), csv);
      return say`All numbers and answers saved: keep that file to yourself.`;
    };
    const print = (sheet: typeof taskSheet | typeof solutionSheet, name: string) => async () => {
      const sheets = entries.flatMap(({ trainee }) =>
        tasks.map((task) => sheet(course, numbersFor(course, task, trainee))),
      );
      await printDocument(sheetsHtml(`${course.title}: ${name}`, sheets));
      return say`${counted(sheets.length, "sheet")} sent to the printer.`;
    };
    const pick = (of: "this" | "all", words: string) =>
      html`<label><input type="radio" name="of" .checked=${this.of === of} @change=${() => {
        this.of = of;
        this.update();
      }} /> ${words}</label>`;
    return html`<h3>${say`Hand out`}</h3>
      ${shown ? html`<fieldset class="of"><legend>${say`For the class`}</legend>${pick("this", say`Task ${shown.number}, ${shown.title}`)} ${pick("all", say`all ${course.tasks.length} tasks`)}</fieldset>` : nothing}
      <label><input type="checkbox" .checked=${this.hasHints} @change=${(event: Event) => {
        this.hasHints = (event.target as HTMLInputElement).checked;
      }} /> ${say`Hints in trainees' files`}</label>
      <div class="choices">
        <button type="button" ?disabled=${isOff} @click=${this.act(files)}>${say`Save trainees' files`}</button>
        <button type="button" ?disabled=${isOff} @click=${this.act(print(taskSheet, "task sheets"))}>${say`Print task sheets`}</button>
        <button type="button" ?disabled=${isOff} @click=${this.act(print(solutionSheet, "solutions"))}>${say`Print solution sheets`}</button>
        <button type="button" ?disabled=${isOff} @click=${this.act(table)}>${say`Save numbers and answers (CSV)`}</button>
      </div>`;
  }

  private marks(course: Course): TemplateResult {
    const { held } = this;
    const take = async () => {
      const files = await chooseFiles(tables, true);
      const marked: MarkedFile[] = [];
      for (const file of files)
        marked.push(markTraineeFile(course, file.name, new Uint8Array(await file.arrayBuffer())));
      const twice = marked.find(({ trainee }, i) => marked.findIndex((one) => one.trainee === trainee) < i);
      if (twice) throw new Refusal(say`Two of the files are of ${twice.trainee}; take only the one that counts.`);
      const again = new Set(marked.map(({ trainee }) => trainee));
      held.files = [...held.files.filter(({ trainee }) => !again.has(trainee)), ...marked];
      return files.length === 0 ? "" : say`${counted(files.length, "file")} marked.`;
    };
    const save = () => {
      handOut(`${fileName(course.title)}-marks.csv`, printMarks(held.files), csv);
      return say`Marks saved.`;
    };
    return html`<h3>${say`Answers and marks`}</h3>
      <div class="choices">
        <button type="button" @click=${this.act(take)}>${say`Take answer files …`}</button>
        <button type="button" ?disabled=${held.files.length === 0} @click=${this.act(save)}>${say`Save marks (CSV)`}</button>
      </div>
      ${held.files.length === 0 ? nothing : classResults(held.files, held.entries)}`;
  }

  private releases(course: Course): TemplateResult {
    const turn = (task: Task) => (event: Event) => {
      const isReleased = (event.target as HTMLInputElement).checked;
      const label = isReleased ? say`working of ${task.title} released` : say`working of ${task.title} held back`;
      this.desk.apply(label, (notebook) => release(notebook, task.file, isReleased));
      this.update();
    };
    return html`<fieldset class="releases"><legend>${say`Working released to trainees who use this notebook`}</legend>
      ${course.tasks.map(
        (task) =>
          html`<label><input type="checkbox" .checked=${course.released.has(task.file)} @change=${turn(task)} /> ${task.number} ${task.title}</label>`,
      )}</fieldset>
      <p class="soft">${say`A released task shows its working and its sliders. Held back, it shows them once all its answers are right.`}</p>`;
  }
}

/** Opens what the trainer does with a class. */
export function openClass(desk: Desk): Promise<void> {
  let shown: ClassDialog | undefined;
  return openDialog(
    say`Class and marks`,
    ({ update, close }) => {
      shown ??= new ClassDialog(desk, update, close);
      return shown.show();
    },
    true,
  );
}
