import { say } from "../words/say";
import { allowanceWords, asAsked } from "./allowance";
import { givenIn, questionOf } from "./asked";
import type { Course } from "./course";
import { type Numbers, scalarOf } from "./numbers";
import { shown } from "./shown";
import { mistakesOf, type TextPart } from "./task";
import { type WorkingStep, workingOf } from "./working";

/** A sheet of paper as data, before it is text or HTML. */
export type Block =
  | { readonly kind: "title" | "heading" | "text" | "step"; readonly text: string }
  | { readonly kind: "list"; readonly items: readonly string[] }
  | { readonly kind: "table"; readonly header: readonly string[]; readonly rows: readonly (readonly string[])[] };

const text = (line: string): Block => ({ kind: "text", text: line });
const heading = (line: string): Block => ({ kind: "heading", text: line });

const titles: Readonly<Record<Exclude<TextPart, "question" | "hint">, string>> = {
  rule: say`The rule`,
  source: say`Where it comes from`,
  beyond: say`What may not be concluded`,
  caution: say`Careful`,
};

function taught({ task }: Numbers): Block[] {
  return (["rule", "source", "beyond", "caution"] as const).flatMap((part) =>
    task.texts[part].length === 0 ? [] : [heading(titles[part]), ...task.texts[part].map(text)],
  );
}

function top(course: Course, { task, trainee }: Numbers, what: string): Block[] {
  const edition = course.edition === "" ? "" : say`, edition ${course.edition}`;
  return [
    { kind: "title", text: say`Task ${task.number}: ${task.title}` },
    text(say`${course.title}${edition}. ${what} for ${trainee}.`),
  ];
}

const asked = (numbers: Numbers): Block[] => [
  ...questionOf(numbers).map(text),
  {
    kind: "table",
    header: [say`Given`, say`Value`],
    rows: givenIn(numbers).map(({ about, unit, value }) => [about, shown(value, unit)]),
  },
];

/**
 * The sheet for a trainee: question, numbers, room for the answers, rule.
 *
 * @param hints how many of the hints to print; none unless the trainer wants them.
 */
export function taskSheet(course: Course, numbers: Numbers, hints = 0): readonly Block[] {
  const { task } = numbers;
  const given = task.texts.hint.slice(0, hints);
  return [
    ...top(course, numbers, say`Task sheet`),
    ...asked(numbers),
    {
      kind: "table",
      header: [say`Asked`, say`How exactly`, say`Your answer`],
      rows: task.answers.map(({ about, unit, allowance }) => [
        about,
        allowanceWords(allowance, unit),
        `${".".repeat(16)}${allowance.kind === "choice" ? "" : shown(0, unit).slice(1)}`,
      ]),
    },
    ...(given.length === 0 ? [] : [heading(say`Hints`), { kind: "list", items: given } as const]),
    ...taught(numbers),
    text(say`A planning aid. The boat's and the equipment's builder, local codes and licensed practice decide.`),
  ];
}

/** What happens inside a step: the formula with its numbers in it where it is more than a call, then each function's own steps. */
function insideOf({ calls, formula, numbers, name }: WorkingStep): readonly string[] {
  const isCallAlone = calls.length === 1 && calls[0]?.formula === formula;
  const inside = calls.flatMap(({ explanation: { title, steps } }) =>
    steps.flatMap(({ numbers: own, value, unit, reached }) => {
      if (!reached || !own) return [];
      const line = typeof value === "number" ? `${own.text} = ${shown(value, unit)}` : own.text;
      return isCallAlone ? [line] : [`${title}: ${line}`];
    }),
  );
  return isCallAlone ? inside : [`${name} = ${numbers}`, ...inside];
}

const stepBlocks = (step: WorkingStep): Block[] => [
  {
    kind: "step",
    text: `${step.about.replace(/\?$/, "")}: ${step.name} = ${step.formula} = ${shown(step.value, step.unit)}`,
  },
  { kind: "list", items: insideOf(step) },
];

/** The sheet for the trainer: solution, its steps, and what each mistake would have come to. */
export function solutionSheet(course: Course, numbers: Numbers): readonly Block[] {
  const { task, worked, hidden } = numbers;
  return [
    ...top(course, numbers, say`Solution`),
    ...asked(numbers),
    {
      kind: "table",
      header: [say`Asked`, say`Right answer`, say`What counts as right`],
      rows: task.answers.map(({ name, about, unit, allowance }) => {
        const value = scalarOf(worked.values.get(name)) ?? "";
        const rounded = asAsked(allowance, value);
        const words = typeof value === "number" ? `${rounded}${shown(0, unit).slice(1)}` : rounded;
        return [about, words, allowanceWords(allowance, unit)];
      }),
    },
    heading(say`The way to it`),
    ...workingOf(numbers).flatMap(stepBlocks),
    heading(say`Mistakes with a name`),
    {
      kind: "table",
      header: [say`Answer`, say`Mistake`, say`Comes to`, say`Advice`],
      rows: mistakesOf(task).map((mistake) => {
        const value = scalarOf(worked.mistakes.get(mistake));
        const unit = task.answers.find(({ name }) => name === mistake.of)?.unit ?? "";
        const comesTo = hidden.has(mistake) || value === undefined ? say`cannot be told here` : shown(value, unit);
        return [mistake.of, mistake.title, comesTo, mistake.advice];
      }),
    },
    heading(say`Hints, in order`),
    { kind: "list", items: task.texts.hint },
    ...taught(numbers),
  ];
}
