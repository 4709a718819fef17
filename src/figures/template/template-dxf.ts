import { DxfWriter, point2d, point3d, TextHorizontalAlignment, Units } from "@tarikjabiri/dxf";
import { say } from "../../words/say";
import { checkBar } from "./paper-drawing";
import type { Purpose, Template } from "./template";

/** Layers by what their lines are for; 7 is the colour number that shows black or white. */
const layers: Readonly<Record<Purpose | "check", string>> = { cut: "CUT", mark: "MARK", note: "NOTE", check: "CHECK" };
const colour = 7;

const alignments = {
  start: TextHorizontalAlignment.Left,
  middle: TextHorizontalAlignment.Center,
  end: TextHorizontalAlignment.Right,
} as const;

/** The format's first versions know no sign for a degree; readers of all of them know this one. */
const plain = (says: string): string =>
  says.replaceAll("°", "%%d").replaceAll("\u00a0", " ").replaceAll("\u2212", "-").replaceAll("\u202f", " ");

/** The template as a DXF drawing in mm, with its lines on layers by purpose and the check bar on its own. */
export function templateDxf(template: Template): string {
  const dxf = new DxfWriter();
  dxf.setUnits(Units.Millimeters);
  for (const name of Object.values(layers)) dxf.addLayer(name, colour, "Continuous");
  for (const { purpose, points, closed } of template.lines) {
    dxf.addLWPolyline(
      points.map(({ x, y }) => ({ point: point2d(x, y) })),
      { layerName: layers[purpose], ...(closed && { flags: 1 }) },
    );
  }
  for (const { at, says, size, anchor = "start" } of template.texts) {
    dxf.addText(point3d(at.x, at.y), size, plain(says), {
      layerName: layers.note,
      ...(anchor !== "start" && { horizontalAlignment: alignments[anchor], secondAlignmentPoint: point3d(at.x, at.y) }),
    });
  }
  const y = template.bottom - 10;
  dxf.addLine(point3d(template.left, y), point3d(template.left + checkBar, y), { layerName: layers.check });
  dxf.addText(
    point3d(template.left, y - 6),
    4,
    say`check bar: ${checkBar} mm; ${plain(template.title)}; ${plain(template.note)}`,
    {
      layerName: layers.check,
    },
  );
  return dxf.stringify();
}
