import { html, type TemplateResult } from "lit/html.js";
import type { AskedTask } from "../../course/asked-task";
import { fileStem } from "../../course/class-files";
import { answerColumn, answerRow, traineeFileOf, typedOn } from "../../course/trainee-notebook";
import { setCells } from "../../notebook/edit-cells";
import type { Page } from "../../notebook/model";
import type { Desk } from "../desk";
import { handOut } from "../files/hand-out";
import { askedTask } from "./asked-task";

/** A task out of a trainee's file: to be worked and handed back, with nothing in it that could mark it. */
export function askedPage(desk: Desk, page: Page, asked: AskedTask): TemplateResult {
  const save = () => {
    const { trainee, text } = traineeFileOf(desk.notebook);
    const name = `${fileStem(trainee)}.csv`;
    handOut(name, text, "text/csv;charset=utf-8");
    desk.say(`Your answers are saved as ${name}; hand that file to your trainer.`);
  };
  const type = (answer: string, text: string) => {
    const row = answerRow(page, answer);
    if (row >= 0) {
      desk.apply(`answer ${answer}`, (notebook) =>
        setCells(notebook, [{ page: page.id, row, column: answerColumn, text: text.trim() }]),
      );
    }
  };
  return html`<div class="task" id="task">
    <p class="whose">Task ${asked.number}. This file holds no solutions, so your trainer marks it.</p>
    ${askedTask(
      asked,
      { typed: (answer) => typedOn(page, answer), type, takes: "whole", mark: () => undefined },
      html`<div class="choices"><button type="submit" class="main">Save my answers</button></div>`,
      save,
    )}
  </div>`;
}
