import { html, type TemplateResult } from "lit/html.js";
import type { AskedTask } from "../../course/asked-task";
import { fileStem } from "../../course/class-files";
import { unreadableIn } from "../../course/mark";
import { answerColumn, answerRow, traineeFileOf, typedOn } from "../../course/trainee-notebook";
import { setCells } from "../../notebook/edit-cells";
import type { Page } from "../../notebook/model";
import { say } from "../../words/say";
import type { Desk } from "../desk";
import { handOut } from "../files/hand-out";
import { askedTask } from "./asked-task";
import type { Hints } from "./hints";

/**
 * A task out of a trainee's file: to be worked and handed back, with nothing in it that could mark it. What cannot be
 * read as an answer is said at once, because that needs no solution.
 */
export function askedPage(desk: Desk, page: Page, asked: AskedTask, hints: Hints): TemplateResult {
  const save = () => {
    const { trainee, text } = traineeFileOf(desk.notebook);
    const name = `${fileStem(trainee)}.csv`;
    handOut(name, text, "text/csv;charset=utf-8");
    desk.say(say`Your answers are saved as ${name}; hand that file to your trainer.`);
  };
  const type = (answer: string, text: string) => {
    const row = answerRow(page, answer);
    if (row >= 0) {
      desk.apply(say`answer ${answer}`, (notebook) =>
        setCells(notebook, [{ page: page.id, row, column: answerColumn, text: text.trim() }]),
      );
    }
  };
  const typed = (answer: string) => typedOn(page, answer);
  const open = asked.answers.filter(({ name }) => typed(name).trim() === "").length;
  const standing =
    open === 0
      ? say`Every answer of this task is filled in.`
      : say`${asked.answers.length - open} of ${asked.answers.length} answers filled in.`;
  return html`<div class="task" id="task">
    <p class="whose">${say`Task ${asked.number}. This file holds no solutions, so your trainer marks it.`}</p>
    ${askedTask(
      asked,
      {
        typed,
        type,
        takes: "whole",
        mark: (name) =>
          unreadableIn(
            asked.answers.find((one) => one.name === name),
            typed(name),
          ),
      },
      html`<div class="choices"><button type="submit" class="main">${say`Save my answers`}</button></div>
        <p class="soft">${standing}</p>`,
      save,
    )}
    ${hints.show(asked.hints)}
  </div>`;
}
