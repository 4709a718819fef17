import { say } from "../words/say";
import { holds, short } from "./draw/ink";
import { lineHeight, text } from "./draw/letters";
import { mm, shown } from "./draw/number";
import { sheet } from "./draw/sheet";
import { type Figure, figure } from "./figure";
import { need } from "./need";
import { thicknessBars } from "./thickness-bars";

/** Plies laid up to a thickness. */
export interface PliesLaidInput {
  /** Plies, whole. */
  readonly plies: number;
  /** Thickness of one, mm. */
  readonly each: number;
  /** Thickness to be reached, mm. */
  readonly wanted: number;
}

const title = say`Plies against the thickness wanted`;

/** One ply less and the plies that are laid, each against the thickness wanted. */
export function pliesLaid(input: PliesLaidInput): Figure {
  return figure(title, () => {
    need(input, { plies: [1, 200], each: [0.01, 50], wanted: [0.01, 500] });
    const { plies, each, wanted } = input;
    const one = (count: number, name: string) => ({ name, laid: count * each, wanted, plies: count });
    const rows = plies > 1 ? [one(plies - 1, say`one less`), one(plies, "laid")] : [one(plies, "laid")];
    const top = 12 + rows.length * lineHeight;
    const bars = thicknessBars(rows, { x: 4, y: top + 10 });
    const lines = rows.map(({ laid, plies: count }) => {
      const enough = laid >= wanted;
      const words = say`${count} × ${shown(each, 3)} mm = ${shown(laid, 2)} mm against ${shown(wanted, 2)} mm: ${enough ? say`holds by ${shown(laid - wanted, 2)} mm` : say`short by ${shown(wanted - laid, 2)} mm`}`;
      return { words, enough };
    });
    return sheet({
      title,
      says: say`One ply is ${shown(each, 3)} mm thick, ${mm(wanted)} are wanted. ${lines.map(({ words }) => `${words}.`).join(" ")}`,
      height: top + 14 + bars.height + 4,
      content: [
        ...lines.map(({ words, enough }, i) =>
          text({ x: 4, y: 12 + i * lineHeight }, words, { fill: enough ? holds : short }),
        ),
        bars.svg,
      ],
    });
  });
}
