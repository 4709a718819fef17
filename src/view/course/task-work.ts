import { html, type TemplateResult } from "lit/html.js";
import type { AskedTask } from "../../course/asked-task";
import { fileStem } from "../../course/class-files";
import type { Course } from "../../course/course";
import { type Mark, markTask } from "../../course/mark";
import type { Numbers } from "../../course/numbers";
import { printTraineeFile } from "../../course/trainee-file";
import { say } from "../../words/say";
import type { Desk } from "../desk";
import { handOut } from "../files/hand-out";
import { askedTask, type Sheet } from "./asked-task";
import { Hints } from "./hints";
import { RuleAtWork } from "./rule-at-work";
import type { TraineeMemory } from "./trainee-memory";

/** One trainee at one task: answers, hints taken, marks, and the working once it is open. */
export class TaskWork {
  private readonly hints: Hints;
  private marks: ReadonlyMap<string, Mark> = new Map();
  private score = "";
  /** All answers were right once; the working stays open after that. */
  private isSolved = false;
  private rule: RuleAtWork | undefined;

  constructor(
    private readonly key: string,
    private readonly memory: TraineeMemory,
    private readonly desk: Desk,
    private readonly update: () => void,
  ) {
    this.hints = new Hints(update);
  }

  show(course: Course, numbers: Numbers, asked: AskedTask, whose: TemplateResult): TemplateResult {
    const sheet: Sheet = {
      typed: (answer: string) => this.memory.typed(this.key, answer),
      type: (answer: string, text: string) => this.type(answer, text),
      // A mark goes with the first key: going at the press on the button, it would move the button away from under it.
      takes: "keys",
      mark: (answer: string) => this.marks.get(answer),
    };
    const under = html`<div class="choices">
        <button type="submit" class="main">${say`Mark my answers`}</button>
        <button type="button" @click=${() => this.save(course, numbers)}>${say`Save my answers`}</button>
      </div>
      <p class="score" role="status">${this.score}</p>`;
    return html`<div class="task" id="task">
      ${whose}
      ${askedTask(asked, sheet, under, () => this.markAll(numbers))}
      ${this.hints.show(asked.hints)}
      ${this.showRule(course, numbers)}
    </div>`;
  }

  private type(answer: string, text: string): void {
    this.memory.type(this.key, answer, text);
    // What was said belongs to what was typed before.
    const marks = new Map(this.marks);
    marks.delete(answer);
    this.marks = marks;
    this.score = "";
    this.update();
  }

  private markAll(numbers: Numbers): void {
    const { answers } = numbers.task;
    const typed = new Map(answers.map(({ name }) => [name, this.memory.typed(this.key, name)]));
    const marked = markTask(numbers, typed);
    this.marks = new Map(marked.map(({ answer, mark }) => [answer.name, mark]));
    const right = marked.filter(({ mark }) => mark.kind === "right").length;
    this.score = right === answers.length ? say`All right.` : say`${right} of ${answers.length} right.`;
    this.isSolved ||= right === answers.length;
    this.update();
  }

  private save(course: Course, numbers: Numbers): void {
    const { trainee } = numbers;
    const name = `${fileStem(trainee)}.csv`;
    const typed = (file: string, answer: string) =>
      this.memory.typed([course.title, course.edition, trainee, file].join("\n"), answer);
    const text = printTraineeFile(course, trainee, { typed: (task, answer) => typed(task.file, answer) });
    handOut(name, text, "text/csv;charset=utf-8");
    this.desk.say(say`Your answers to all tasks are saved as ${name}; hand that file to your trainer.`);
  }

  private showRule(course: Course, numbers: Numbers): TemplateResult {
    if (!this.isSolved && !course.released.has(numbers.task.file)) {
      return html`<section aria-label=${say`Working`}><h2>${say`Working`}</h2>
        <p class="soft">${say`The working and the sliders open once all your answers are right, or when your trainer releases them.`}</p></section>`;
    }
    if (this.rule?.of !== numbers) this.rule = new RuleAtWork(numbers, this.update);
    return this.rule.show();
  }
}
