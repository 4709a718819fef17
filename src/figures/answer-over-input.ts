import { scalePoint } from "d3-scale";
import { line as curve } from "d3-shape";
import { say } from "../words/say";
import { bottomAxis, leftAxis, roundScale } from "./draw/axis";
import { ink, soft } from "./draw/ink";
import { text } from "./draw/letters";
import { circle, line, path, round } from "./draw/mark";
import { sheet, sheetWidth } from "./draw/sheet";
import { type Figure, figure } from "./figure";
import { need } from "./need";

/** A quantity of the curve, and how its values are written with their unit. */
export interface Quantity {
  /** With its unit, as the scale is called: `current, A`. */
  readonly words: string;
  readonly write: (value: number | string) => string;
}

export interface AnswerOverInputInput {
  readonly answer: Quantity;
  readonly input: Quantity;
  /** The answer goes up and down in steps, so that a line between its values would say what is not so. */
  readonly isStepped: boolean;
  /** In the order of the input; an answer that cannot be worked out there is left out of the curve. */
  readonly points: readonly { readonly x: number | string; readonly y: number | undefined }[];
  /** Where the input stands now. */
  readonly now: { readonly x: number | string; readonly y: number };
}

const left = 58;
const right = sheetWidth - 26;
const top = 34;
const bottom = 176;
const height = 214;

/** One answer over one input while everything else stays: a curve over numbers, dots over names. */
export function answerOverInput(input: AnswerOverInputInput): Figure {
  const title = say`${input.answer.words} over ${input.input.words}`;
  return figure(title, () => {
    need({ answer: input.now.y });
    return drawCurve(title, input);
  });
}

function drawCurve(title: string, { answer, input, points, now, isStepped }: AnswerOverInputInput) {
  const known = points.filter((point): point is { x: number | string; y: number } => point.y !== undefined);
  const numbers = points.map(({ x }) => x).filter((x) => typeof x === "number");
  const isCurve = numbers.length === points.length;
  const y = roundScale([...known.map((point) => point.y), now.y], [bottom, top], 5);
  const straight = roundScale(isCurve ? numbers : [0, 1], [left, right], 6);
  const named = scalePoint<string>(
    points.map((point) => String(point.x)),
    [left + 18, right - 18],
  );
  const x = (value: number | string): number =>
    isCurve && typeof value === "number" ? straight(value) : (named(String(value)) ?? left);
  const d = curve<{ x: number | string; y: number | undefined }>(
    (point) => Number(round(x(point.x))),
    (point) => Number(round(y(point.y ?? 0))),
  ).defined((point) => point.y !== undefined)([...points]);
  const isLine = isCurve && !isStepped;
  const hasDots = !isLine || points.length <= 8;
  const at = { x: x(now.x), y: y(now.y) };
  const said = `${input.write(now.x)}: ${answer.write(now.y)}`;
  const isRight = at.x > (left + right) / 2;
  const ends = [known[0], known.at(-1)].filter((point) => point !== undefined);
  const says = [
    say`At ${input.write(now.x)} it is ${answer.write(now.y)}.`,
    ...ends.map((point) => say`At ${input.write(point.x)} it would be ${answer.write(point.y)}.`),
    say`Everything else stays as it is.`,
  ].join(" ");
  return sheet({
    title,
    says,
    height,
    content: [
      leftAxis({ scale: y, at: left, to: right, says: answer.words }),
      isCurve
        ? bottomAxis({ scale: straight, at: bottom, to: top, says: input.words })
        : line({ x: left, y: bottom }, { x: right, y: bottom }),
      ...(isCurve
        ? []
        : [
            ...points.map((point) =>
              text({ x: x(point.x), y: bottom + 15 }, String(point.x), { anchor: "middle", fill: soft, tick: true }),
            ),
            text({ x: right, y: bottom + 29 }, input.words, { anchor: "end", fill: soft }),
          ]),
      isLine && d ? path(d, { width: 1.8 }) : "",
      ...(hasDots ? known.map((point) => circle({ x: x(point.x), y: y(point.y) }, 2.2, { fill: ink })) : []),
      line({ x: at.x, y: bottom }, at, { width: 0.8, dash: "2 2" }),
      line({ x: left, y: at.y }, at, { width: 0.8, dash: "2 2" }),
      circle(at, 4.5, { width: 1.4 }),
      text({ x: at.x + (isRight ? -9 : 9), y: Math.max(top + 4, at.y - 8) }, said, {
        anchor: isRight ? "end" : "start",
        strong: true,
        rim: true,
      }),
    ],
  });
}
