import { say } from "../../words/say";
import { mathWords } from "../math-element";
import { numberText } from "../number-text";
import type { Surface } from "../steps/surface";
import { readings } from "../surface/read-surface";
import type { Explain } from "./kinds";

export const saySurface: Explain<Surface> = (step, after) => {
  const { says } = readings[step.reading];
  const written = { text: says, markup: mathWords(says) };
  if (!after) return { symbols: written, numbers: undefined, words: "" };
  const many = (name: string): number => (after.value(name) as readonly number[]).length;
  const at = say`station ${numberText(after.number("station"))} mm, height ${numberText(after.number("height"))} mm`;
  const way =
    after.value("between") === "straight" ? say`straight lines` : say`cubic splines, not-a-knot at their ends,`;
  return {
    symbols: written,
    numbers: { text: say`${says}, axis at ${at}`, markup: mathWords(say`${says}, axis at ${at}`) },
    words: say`${way} both ways through offsets at ${many("stations")} stations and ${many("heights")} heights`,
  };
};
