import { isFormula } from "../../engine/content";
import { nameOnPage } from "../../notebook/cell-name";
import { firstOption, isOptionPage, type Page } from "../../notebook/model";
import { say } from "../../words/say";
import { type Finding, found } from "../finding";
import type { Form } from "../form";
import type { Rule } from "../rule";
import type { Subject } from "../subject";

const differsName = "differs";
const typedOverName = "typed-over";

/** Forms of each row of the option pages, rows in order. */
function rowsOf({ forms }: Subject): readonly (readonly Form[])[] {
  const rows = new Map<string, Form[]>();
  for (const form of forms) {
    if (!isOptionPage(form.page)) continue;
    const key = `${form.page.id} ${form.row}`;
    const known = rows.get(key);
    if (known) known.push(form);
    else rows.set(key, [form]);
  }
  return [...rows.values()];
}

const shown = (page: Page, row: number, column: number): string => page.rows[row]?.[column] ?? "";

/** The form that most options share; the one of the first option where two are equally common. */
const usual = (forms: readonly Form[]): Form =>
  forms.reduce((most, form) => (form.columns.length > most.columns.length ? form : most));

/** An option whose formula is not the one of its neighbours. */
export const differs: Rule = {
  name: differsName,
  about: say`an option whose formula differs from that of its neighbours in the row`,
  find: (subject) =>
    rowsOf(subject).flatMap((forms) => {
      if (forms.length < 2) return [];
      const norm = usual(forms);
      const model = nameOnPage(norm.page, norm.row, norm.columns[0] ?? 0);
      return forms
        .filter((form) => form !== norm)
        .flatMap(({ page, row, columns }) =>
          columns.map((column) => {
            const own = shown(page, row, column);
            const others = shown(page, row, norm.columns[0] ?? 0);
            return found(
              differsName,
              "warning",
              nameOnPage(page, row, column),
              say`${own} is another formula than ${model.option} has (${others}); make them equal or say why they differ`,
            );
          }),
        );
    }),
};

function typedOverIn(forms: readonly Form[]): Finding[] {
  const [first] = forms;
  if (!first) return [];
  const { page, row } = first;
  const cells = page.rows[row] ?? [];
  const calculated = forms.flatMap(({ columns }) => columns);
  const typed = cells.flatMap((text, column) =>
    column >= firstOption && text !== "" && !isFormula(text) ? [column] : [],
  );
  if (typed.length === 0) return [];
  if (typed.length > calculated.length) {
    return calculated.map((column) =>
      found(differsName, "warning", nameOnPage(page, row, column), say`calculated here, typed in the other options`),
    );
  }
  return typed.map((column) =>
    found(
      typedOverName,
      "error",
      nameOnPage(page, row, column),
      say`${cells[column] ?? ""} is typed where the other options calculate (${cells[calculated[0] ?? 0] ?? ""}); put the formula back`,
    ),
  );
}

/** A result that was replaced by a number or a text. */
export const typedOver: Rule = {
  name: typedOverName,
  about: say`a result that was typed over, while the other options calculate it`,
  find: (subject) => rowsOf(subject).flatMap(typedOverIn),
};
