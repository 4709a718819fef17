import type { Row } from "../notebook/model";
import { printPage } from "../notebook/page-csv";
import { say } from "../words/say";
import { asAsked } from "./allowance";
import { givenIn } from "./asked";
import type { ClassEntry } from "./class-list";
import type { Course } from "./course";
import { numbersFor, scalarOf } from "./numbers";
import type { Task } from "./task";

/** A cell for another program: text that it could take for a formula gets an apostrophe, numbers do not. */
export const harmless = (text: string): string =>
  /^[=+\-@\t\r]/.test(text) && !/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(text) ? `'${text}` : text;

/** Every trainee's numbers and answers, one a row: for the trainer, as CSV. */
export function printClassTable(
  course: Course,
  entries: readonly ClassEntry[],
  tasks: readonly Task[] = course.tasks,
): string {
  const beside = Object.keys(entries[0]?.beside ?? {});
  const rows = entries.flatMap(({ trainee, beside: own }) =>
    tasks.flatMap((task): Row[] => {
      const numbers = numbersFor(course, task, trainee);
      const line = (part: string, name: string, unit: string, value: string, exact: string): Row =>
        [
          trainee,
          ...beside.map((column) => own[column] ?? ""),
          String(task.number),
          task.title,
          part,
          name,
          unit,
          value,
          exact,
        ].map(harmless);
      return [
        ...givenIn(numbers).map(({ name, unit, value }) => line(say`given`, name, unit, String(value), String(value))),
        ...task.answers.map(({ name, unit, allowance }) => {
          const value = scalarOf(numbers.worked.values.get(name)) ?? "";
          return line(say`answer`, name, unit, asAsked(allowance, value), String(value));
        }),
      ];
    }),
  );
  return printPage([
    [
      say`Trainee`,
      ...beside.map(harmless),
      say`Task`,
      say`Title`,
      say`Part`,
      say`Name`,
      say`Unit`,
      say`Value`,
      say`Exact value`,
    ],
    ...rows,
  ]);
}
