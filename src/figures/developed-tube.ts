import { say } from "../words/say";
import { soft } from "./draw/ink";
import { text } from "./draw/letters";
import { mm, shown } from "./draw/number";
import { sheet } from "./draw/sheet";
import { type Figure, figure } from "./figure";
import { need } from "./need";
import { type TrimInput, trimPoints } from "./trim-points";
import { trimTable } from "./trim-table";
import { unrolled } from "./unrolled";

const title = say`Tube end unrolled, with its cut line`;

/** The outside of the tube laid flat from its top, outboard is up, with the points of the trim table. */
export function developedTube(input: TrimInput): Figure {
  return figure(title, () => {
    need(input, { outside: [1, 5000] });
    return drawTube(input);
  });
}

function drawTube(input: TrimInput) {
  const points = trimPoints(input);
  const girth = Math.PI * input.outside;
  const view = unrolled({ girth, trims: points.map(({ trim }) => trim), curve: trimPoints(input, 144), points });
  const table = trimTable(points, view.bottom + 40);
  const foot = view.bottom + 40 + table.height;
  const says = [
    say`Outside of the tube laid flat from its top, outboard is up, to scale; ${mm(girth)} round an outside diameter of ${mm(input.outside)}.`,
    say`Cut line against the mean at 24 points, ${shown(girth / 24, 1)} mm apart, in mm: ${points.map(({ number, trim }) => `${number}: ${shown(trim, 1)}`).join(", ")}.`,
    say`Point 1 is the top, 7 forward, 13 the bottom, 19 aft.`,
  ].join(" ");
  return sheet({
    title,
    says,
    height: foot + 10,
    content: [
      ...view.content,
      table.svg,
      text({ x: 8, y: foot }, say`point and mm outboard of the mean; ${shown(girth / 24, 1)} mm from point to point`, {
        fill: soft,
      }),
    ],
  });
}
