import { type Numbers, scalarOf } from "../../course/numbers";
import type { Figure } from "../../figures/figure";
import { fuseWindow } from "../../figures/fuse-window";
import { holeSquare } from "../../figures/hole-square";
import { leverArms } from "../../figures/lever-arms";
import { lossBySize } from "../../figures/loss-by-size";
import { pliesLaid } from "../../figures/plies-laid";
import { potLife } from "../../figures/pot-life";
import { pushAgainstWind } from "../../figures/push-against-wind";
import { roundedEdge } from "../../figures/rounded-edge";
import { voltageBudget } from "../../figures/voltage-budget";
import { waterOverTube } from "../../figures/water-over-tube";

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
    needs: { push: "N", centre: "m", pivot: "m", thruster: "m", need: "N", stated: "N" },
    draw: (of) =>
      leverArms({
        push: of("push"),
        centre: of("centre"),
        pivot: of("pivot"),
        thruster: of("thruster"),
        needed: of("need"),
        offered: of("stated"),
      }),
  },
  {
    needs: { diameter: "mm", light: "mm", deep: "mm", immersion: "diameters" },
    draw: (of) => waterOverTube({ diameter: of("diameter"), light: of("light"), deep: of("deep"), least: 0.5 }),
  },
  {
    needs: { diameter: "mm", edge: "mm", inlet: "1", friction: "1" },
    draw: (of) =>
      roundedEdge({ diameter: of("diameter"), radius: of("edge"), inlet: of("inlet"), friction: of("friction") }),
  },
  {
    needs: { plies: "1", each: "mm", thickness: "mm" },
    draw: (of) => pliesLaid({ plies: of("plies"), each: of("each"), wanted: of("thickness") }),
  },
  {
    needs: { minutes: "min", potlife: "min", temperature: "degC", rate: "kg/min", portion: "kg", portions: "1" },
    draw: (of) =>
      potLife({
        stated: of("minutes"),
        today: of("potlife"),
        temperature: of("temperature"),
        share: 0.6,
        rate: of("rate"),
        portion: of("portion"),
        portions: of("portions"),
      }),
  },
  {
    needs: { current: "A", run: "m", area: "mm2", temperature: "degC", limit: "V" },
    draw: (of) =>
      lossBySize({
        current: of("current"),
        run: of("run"),
        temperature: of("temperature"),
        limit: of("limit"),
        size: of("area"),
      }),
  },
  {
    needs: { current: "A", run: "m", size: "mm2", limit: "V" },
    draw: (of) =>
      lossBySize({
        current: of("current"),
        run: of("run"),
        temperature: 50,
        limit: of("limit"),
        size: of("size"),
      }),
  },
  {
    needs: { open: "V", outside: "mohm", current: "A", volts: "V" },
    draw: (of) =>
      voltageBudget({
        rest: of("open"),
        losses: [{ what: "outside motor", volts: (of("outside") / 1000) * of("current") }],
        least: 10.5,
        called: "rated at",
        current: of("current"),
      }),
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
