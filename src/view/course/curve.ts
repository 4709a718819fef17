import { amountAt, countOf } from "../../course/amount";
import { type Numbers, scalarOf } from "../../course/numbers";
import type { Scalar } from "../../course/scalar";
import { shown, shownUnit } from "../../course/shown";
import type { Answer, Drawn, Task } from "../../course/task";
import { cellsOf } from "../../course/task-cells";
import { answerOverInput } from "../../figures/answer-over-input";
import type { Figure } from "../../figures/figure";

const mostPoints = 41;

const titleOf = ({ about, unit }: { readonly about: string; readonly unit: string }): string => {
  const written = shownUnit(unit).trim();
  return written === "" ? about : `${about}, ${written}`;
};

/** An answer over one input; the other inputs are as they stand, and the curve is worked out once for them. */
export class Curve {
  private known: { readonly key: string; readonly points: readonly { x: Scalar; y: number | undefined }[] } | undefined;

  constructor(private readonly task: Task) {}

  draw(numbers: Numbers, input: Drawn, answer: Answer): Figure {
    const now = scalarOf(numbers.worked.values.get(answer.name));
    return answerOverInput({
      answer: { words: titleOf(answer), write: (value) => shown(four(value), answer.unit) },
      input: { words: titleOf(input), write: (value) => shown(value, input.unit) },
      isStepped: answer.allowance.kind === "exact",
      points: this.points(numbers, input, answer),
      now: { x: numbers.drawn.get(input.name) ?? "", y: typeof now === "number" ? now : Number.NaN },
    });
  }

  private points({ drawn }: Numbers, { name, amount }: Drawn, answer: Answer) {
    const others = [...drawn].filter(([one]) => one !== name);
    const key = JSON.stringify([name, answer.name, others]);
    if (this.known?.key === key) return this.known.points;
    const count = countOf(amount);
    const every = Math.max(1, Math.ceil((count - 1) / (mostPoints - 1)));
    const places = Array.from({ length: count }, (_, place) => place);
    const points = places
      .filter((place) => place % every === 0 || place === count - 1)
      .map((place) => {
        const x = amountAt(amount, place);
        const { values } = cellsOf(this.task).work(new Map([...others, [name, x]]));
        const y = scalarOf(values.get(answer.name));
        return { x, y: typeof y === "number" ? y : undefined };
      });
    this.known = { key, points };
    return points;
  }
}

const four = (value: Scalar): Scalar => (typeof value === "number" ? Number(value.toPrecision(4)) : value);
