import { nameOnPage } from "../../notebook/cell-name";
import { isOptionPage, lead, textAt } from "../../notebook/model";
import { readUnit } from "../../units/unit";
import { say } from "../../words/say";
import { found } from "../finding";
import type { Rule } from "../rule";
import { namesOf } from "../subject";
import { unitFindings } from "../units/cell";

/** Units that do not fit. Options with the same formula read the same rows, so one of them speaks for all. */
export const units: Rule = {
  name: "units",
  about: say`parts of a formula, arguments of a named function, or a result, whose units do not fit`,
  readsParts: true,
  find: ({ forms, live, find }) =>
    forms.flatMap((form) => {
      const findings = unitFindings(live, { page: form.page.id, row: form.row, column: form.columns[0] ?? 0 }, find);
      return namesOf(form).flatMap((cell) =>
        findings.map(({ level, message }) => found("units", level, cell, message)),
      );
    }),
};

/** A unit text that the program does not know, so that nothing can be said of it. */
export const unknownUnit: Rule = {
  name: "unknown-unit",
  about: say`a row whose unit text is not known`,
  find: ({ notebook }) =>
    notebook.pages.filter(isOptionPage).flatMap((page) =>
      page.rows.flatMap((_, row) => {
        const unit = textAt(page, row, lead.unit);
        if (row === 0 || unit === "" || readUnit(unit)) return [];
        const message = say`unit "${unit}" is not known; write it as in mm, m2, kg/m3, N m, or leave it empty for text`;
        return [found("unknown-unit", "warning", nameOnPage(page, row, lead.unit), message)];
      }),
    ),
};
