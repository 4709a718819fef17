import { nameOnPage } from "../../notebook/cell-name";
import { say } from "../../words/say";
import { found } from "../finding";
import type { Form } from "../form";
import { everyPart } from "../parts";
import type { Rule } from "../rule";
import { placesOf, type Subject } from "../subject";

const callsNamed = ({ find }: Subject, form: Form): boolean =>
  form.parsed !== undefined &&
  everyPart(form.parsed).some(({ part }) => part.kind === "call" && find(part.name) !== undefined);

/** Errors at the cell where they begin; what they spoil further on is not told again. */
const beginning =
  (name: string, named: boolean): Rule["find"] =>
  (subject) =>
    subject.forms.flatMap((form) =>
      placesOf(form).flatMap((at) => {
        if (subject.kind(form.page, at.row, at.column) !== "error") return [];
        const value = subject.value(form.page, at.row, at.column);
        if (value.kind !== "error" || value.from !== "") return [];
        const refused = callsNamed(subject, form) && (value.code === "#NUM!" || value.code === "#N/A");
        if (refused !== named) return [];
        return [found(name, "error", nameOnPage(form.page, at.row, at.column), `${value.code} ${value.sentence}`)];
      }),
    );

/** An argument outside what a named function is published for, or a size that is in no table. */
export const outsidePublished: Rule = {
  name: "outside-published",
  about: say`an input outside the published range of a named function`,
  find: beginning("outside-published", true),
};

export const errorValue: Rule = {
  name: "error-value",
  about: say`a formula whose result is an error`,
  find: beginning("error-value", false),
};
