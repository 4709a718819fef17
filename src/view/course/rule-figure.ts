import { type Numbers, scalarOf } from "../../course/numbers";
import type { Figure } from "../../figures/figure";
import { fuseWindow } from "../../figures/fuse-window";
import { holeSquare } from "../../figures/hole-square";
import { pushAgainstWind } from "../../figures/push-against-wind";

interface Fit {
  /** Names that the task must have, each with its unit. */
  readonly needs: Readonly<Record<string, string>>;
  readonly draw: (of: (name: string) => number) => Figure;
}

/** Drawings of the notebook that also show a task's numbers, by the names that the task gives them. */
const fits: readonly Fit[] = [
  {
    needs: { current: "A", carry: "A", rule: "1", fuse: "A" },
    draw: (of) => fuseWindow({ current: of("current"), carry: of("carry"), share: of("rule") / 100, fuse: of("fuse") }),
  },
  {
    needs: { diameter: "mm", entrance: "deg", flare: "deg" },
    draw: (of) => holeSquare({ outside: of("diameter"), entrance: of("entrance"), flare: of("flare") }),
  },
  {
    needs: { wind: "m/s", need: "N", gives: "N" },
    draw: (of) => pushAgainstWind({ wind: of("wind"), thrustNeeded: of("need"), spare: 1, thrust: of("gives") }),
  },
];

/** The drawing that fits a task's names and units; undefined where none does. */
export function figureFor({ task, worked }: Numbers): Figure | undefined {
  const units = new Map([...task.drawn, ...task.made, ...task.way].map(({ name, unit }) => [name, unit]));
  const fit = fits.find(({ needs }) => Object.entries(needs).every(([name, unit]) => units.get(name) === unit));
  return fit?.draw((name) => Number(scalarOf(worked.values.get(name))));
}
