import { say } from "../words/say";
import { dimensionLine } from "./draw/dimension";
import { cut, holds, short, soft } from "./draw/ink";
import { lineHeight, text } from "./draw/letters";
import { bold, centre, circle, group, line, type Point } from "./draw/mark";
import { type Note, notes, notesHeight } from "./draw/notes";
import { mm, shown } from "./draw/number";
import { toScale } from "./draw/scale";
import { sheet, sheetWidth } from "./draw/sheet";
import { type Figure, figure } from "./figure";
import { need } from "./need";

/** A tube under two waterlines. */
export interface WaterOverTubeInput {
  /** Diameter of the tunnel, mm. */
  readonly diameter: number;
  /** Axis below the water in light and in deep trim, mm. */
  readonly light: number;
  readonly deep: number;
  /** Least water over the tube, in diameters. */
  readonly least: number;
}

const title = say`Water over the tube`;
const column = 222;

/** The tube seen along its axis, to scale: cover in the worse trim against the least that is wanted. */
export function waterOverTube(input: WaterOverTubeInput): Figure {
  return figure(title, () => {
    need(input, { diameter: [1, 5000], light: [-5000, 20000], deep: [-5000, 20000], least: [0, 20] });
    return drawWater(input);
  });
}

function drawWater({ diameter, light, deep, least }: WaterOverTubeInput) {
  const R = diameter / 2;
  const worse = Math.min(light, deep);
  const cover = worse - R;
  const wanted = least * diameter;
  const enough = cover >= wanted;
  const high = Math.max(light, deep, R + wanted, R) + diameter * 0.12;
  const low = Math.min(-R, light, deep) - diameter * 0.12;
  const wide = diameter * 0.95;
  const { at, bottom, marks } = toScale(
    { left: -wide, right: wide, bottom: low, top: high },
    { x: 4, y: 6, width: column - 22, height: 230 },
  );
  const water = (z: number, name: string): string => {
    const [from, to] = [at(-wide, z), at(wide, z)];
    return line(from, to, { width: 0.9, dash: name === "deep" ? "10 3 2 3" : "14 3" });
  };
  const across = (x: number, from: number, to: number, stroke?: string) =>
    dimensionLine(at(x, from), at(x, to), stroke);
  const judged = enough ? holds : short;
  const middle = (x: number, z: number): Point => at(x, z);
  const list: Note[] = [
    { at: at(wide, deep), says: say`water, deep trim ${mm(deep)}` },
    { at: at(wide, light), says: say`water, light trim ${mm(light)}` },
    {
      at: middle(R * 0.5, R + cover / 2),
      says: say`cover ${mm(cover)}: ${enough ? say`holds` : say`short`}`,
      fill: judged,
      strong: !enough,
    },
    { at: middle(-R * 0.7, R + wanted / 2), says: say`wanted ${mm(wanted)}` },
    { at: at(R * 0.7, -R * 0.7), says: say`diameter ${mm(diameter)}` },
  ];
  const width = sheetWidth - column;
  const lowest = Math.max(bottom + 4, notesHeight(list, width) + 8);
  const line2 = say`${shown(cover / diameter, 2)} diameters in the worse trim; least ${shown(least, 2)}`;
  const says = [
    say`Tunnel of ${mm(diameter)}, seen along its axis, to scale; the axis lies ${mm(light)} below the water in light trim and ${mm(deep)} in deep trim.`,
    say`Cover in the worse trim ${mm(cover)}, ${shown(cover / diameter, 2)} diameters; ${mm(wanted)}, ${shown(least, 2)} diameters, are wanted: ${enough ? say`holds` : say`falls short`}.`,
  ].join(" ");
  return sheet({
    title,
    says,
    height: lowest + lineHeight + 4,
    content: [
      group(marks, circle(at(0, 0), at(R, 0).x - at(0, 0).x, { ...bold, fill: cut })),
      line(at(-R * 1.2, 0), at(R * 1.2, 0), centre),
      line(at(0, -R * 1.2), at(0, R * 1.2), centre),
      water(deep, "deep"),
      water(light, "light"),
      line(at(-R, R), at(R * 0.7, R), { width: 0.5, stroke: soft }),
      line(at(-R, R + wanted), at(0, R + wanted), { width: 0.5, dash: "3 3", stroke: soft }),
      across(R * 0.5, R, worse, judged),
      across(-R * 0.7, R, R + wanted),
      notes(list, { x: column, top: 4, bottom: lowest, width }),
      text({ x: 4, y: lowest + 10 }, line2, { fill: judged }),
    ],
  });
}
