import { numberText, plainNumberText } from "../formula/number-text";
import { Refusal } from "../notebook/refusal";
import { say } from "../words/say";
import { type Numbers, scalarOf } from "./numbers";
import type { Scalar } from "./scalar";
import { shown } from "./shown";
import type { Calculated, Drawn, Task } from "./task";

/** A number that the trainee is given. */
export interface Given {
  readonly name: string;
  readonly about: string;
  readonly unit: string;
  readonly value: Scalar;
}

const placeholders = /\{([a-z][a-z0-9_]*)\}/g;

/** Whether the question gives a number of its task, by name. */
export function isGiven({ texts }: Task): (name: string) => boolean {
  const named = new Set(texts.question.flatMap((text) => [...text.matchAll(placeholders)].map(([, name]) => name)));
  return (name) => named.has(name);
}

/**
 * The numbers that the question names, in the order of the page.
 *
 * @throws Refusal for a number with more digits than are printed: the trainee would work with another one.
 */
export function givenIn(numbers: Numbers): readonly Given[] {
  const { task, worked } = numbers;
  const given = isGiven(task);
  return [...task.drawn, ...task.made]
    .filter(({ name }) => given(name))
    .map(({ name, about, unit, row }: Drawn | Calculated) => {
      const value = scalarOf(worked.values.get(name)) ?? "";
      if (typeof value === "number" && Number(plainNumberText(value)) !== value) {
        throw new Refusal(
          say`${task.file}, row ${row}: ${name} is ${value}, shown as ${numberText(value)}; round it with ROUND.`,
        );
      }
      return { name, about, unit, value };
    });
}

/** The paragraphs of the question with the trainee's numbers in them. */
export function questionOf(numbers: Numbers): readonly string[] {
  const given = new Map(givenIn(numbers).map((one) => [one.name, one]));
  return numbers.task.texts.question.map((text) =>
    text.replace(placeholders, (whole, name) => {
      const one = given.get(name);
      return one ? shown(one.value, one.unit) : whole;
    }),
  );
}
