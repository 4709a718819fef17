import type { Notebook } from "../notebook/model";
import { rowsNamed } from "./rows";
import type { VariedInput } from "./spread/spread";
import type { Subject } from "./subject";
import { ownSpread, readShape } from "./vary";

/** Text of an input that stays as it is, whatever was said of it before. */
export const heldStill = "";

/** Places of the inputs that a pattern names; of several rows those alone that hold numbers. */
export function inputsNamed(notebook: Notebook, { inputs }: Subject, pattern: string): number[] {
  const rows = rowsNamed(notebook, pattern);
  return rows.flatMap(({ name }) => {
    const place = inputs.findIndex((input) => input.name === name);
    return place >= 0 && (rows.length === 1 || typeof inputs[place]?.value === "number") ? [place] : [];
  });
}

/** What is said of each input in texts, by place; the last word counts. */
export function variedTexts(
  notebook: Notebook,
  subject: Subject,
  texts: readonly (readonly [pattern: string, text: string])[],
): Map<number, string> {
  const found = new Map<number, string>();
  for (const { input, shape } of ownSpread(subject)) {
    if (shape.kind === "three points") found.set(input, `${shape.low},${shape.likely},${shape.high}`);
  }
  for (const [pattern, text] of texts) {
    for (const place of inputsNamed(notebook, subject, pattern)) found.set(place, text);
  }
  return found;
}

/**
 * Inputs to vary: those the notebook spreads by itself, then those that texts name.
 *
 * @param texts pattern and shape: `Supply.run` and `10,12,20`; an empty shape holds an input still.
 * @throws Refusal for a shape that cannot be read.
 */
export function variedInputs(
  notebook: Notebook,
  subject: Subject,
  texts: readonly (readonly [pattern: string, text: string])[],
): VariedInput[] {
  return [...variedTexts(notebook, subject, texts)].flatMap(([place, text]) => {
    const input = subject.inputs[place];
    return input && text.trim() !== heldStill ? [{ input: place, shape: readShape(input, text) }] : [];
  });
}
