import { tunnelHoleEdge } from "../../functions/tunnel/hole-edge";
import { tunnelHoleLength } from "../../functions/tunnel/hole-length";
import { say } from "../../words/say";
import type { Point } from "../draw/mark";
import { mm, shown } from "../draw/number";
import { type HoleSquareInput, holePoint } from "../hole-square";
import { named } from "../named";
import { need } from "../need";
import { mirrored, type Side, type Template, type TemplateLine, type TemplateText } from "./template";

const edge = 22;
const tick = 6;

/**
 * The outline that is laid flat on the skin: the hole, its centre, up and forward, and the tube's angles every
 * 15 degrees.
 *
 * @param side seen from outside the boat: forward is right to starboard and left to port.
 * @throws Fault as `TUNNEL.HOLELENGTH` does, and for a number that is missing.
 */
export function holeTemplate(input: HoleSquareInput, side: Side): Template {
  need(input);
  const { outside: diameter, entrance, flare } = input;
  const long = named(tunnelHoleLength, { diameter, entrance, flare });
  const round = named(tunnelHoleEdge, { diameter, entrance, flare });
  const outline = Array.from({ length: 360 }, (_, angle) => holePoint(input, angle));
  const across = Math.max(...outline.map(({ x }) => x)) + edge;
  const up = Math.max(...outline.map(({ y }) => y)) + edge;
  const at = (angle: number, further: number): Point => {
    const { x, y } = holePoint(input, angle);
    const size = Math.hypot(x, y);
    return { x: x * (1 + further / size), y: y * (1 + further / size) };
  };
  const angles = Array.from({ length: 24 }, (_, i) => i * 15);
  const lines: TemplateLine[] = [
    { purpose: "cut", points: outline, closed: true },
    {
      purpose: "mark",
      points: [
        { x: -across, y: 0 },
        { x: across, y: 0 },
      ],
    },
    {
      purpose: "mark",
      points: [
        { x: 0, y: -up },
        { x: 0, y: up },
      ],
    },
    ...angles.map((angle): TemplateLine => ({ purpose: "note", points: [at(angle, 0), at(angle, tick)] })),
  ];
  const texts: TemplateText[] = [
    { at: { x: 2, y: up - 6 }, says: say`up`, size: 5 },
    { at: { x: across - 2, y: 2.5 }, says: say`forward`, size: 5, anchor: "end" },
    { at: { x: 3, y: 18 }, says: say`${side}, seen from outside`, size: 4.5 },
    { at: { x: 3, y: 11 }, says: say`cross: tunnel axis`, size: 4.5 },
    ...angles
      .filter((angle) => angle % 45 !== 0)
      .map((angle): TemplateText => {
        const { x, y } = at(angle, tick + 5);
        return { at: { x, y: y - 1.2 }, says: `${angle}°`, size: 3.5, anchor: "middle" };
      }),
  ];
  const template: Template = {
    title: say`Hole outline, ${side}`,
    note: say`${mm(long)} by ${mm(diameter)}, edge ${mm(round)}`,
    says: [
      say`Lay flat on the skin on the ${side} side with the cross on the tunnel's axis and the arm "up" upright along the skin.`,
      say`Ellipse ${shown(long, 1)} mm by ${shown(diameter, 1)} mm, edge ${mm(round)}, for a flat side with entrance ${shown(entrance, 1)}° and flare ${shown(flare, 1)}°.`,
    ].join(" "),
    lines,
    texts,
    left: -across,
    right: across,
    bottom: -up,
    top: up,
  };
  return side === "starboard" ? template : mirrored(template);
}
