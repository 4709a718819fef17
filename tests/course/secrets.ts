import { mistakesOf, type Task } from "../../src/course/task";

/** Parts of a page that are not for trainees before they ask, as they would be looked for. */
export const hiddenFirst = (task: Task): readonly string[] => [...secretsOf(task), ...task.texts.hint];

/** Parts of a page that are not for trainees, as they would be looked for. */
export function secretsOf(task: Task): readonly string[] {
  const formulas = [...task.way, ...mistakesOf(task), ...task.requirements].map(({ formula }) => formula);
  return [
    ...formulas.filter((formula) => /[(*/+^]/.test(formula)),
    ...formulas.flatMap((formula) => formula.match(/[A-Z][A-Z0-9.]+(?=\()/g) ?? []).map((name) => `${name}(`),
    ...task.way.filter((step) => !("allowance" in step)).map(({ about }) => about),
    ...mistakesOf(task).flatMap(({ title, advice }) => [title, advice]),
    ...task.requirements.map(({ why }) => why),
  ];
}
