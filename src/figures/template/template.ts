import type { Point } from "../draw/mark";

/** What a line of a template is for: to be cut, to be marked on the work, or only to be read. */
export type Purpose = "cut" | "mark" | "note";

export interface TemplateLine {
  readonly purpose: Purpose;
  readonly points: readonly Point[];
  readonly closed?: boolean;
}

export interface TemplateText {
  readonly at: Point;
  readonly says: string;
  /** Height of the letters, mm. */
  readonly size: number;
  readonly anchor?: "start" | "middle" | "end";
}

/** A full-size template: every length in mm, x to the right, y up. */
export interface Template {
  readonly title: string;
  /** Everything that it says, in sentences. */
  readonly says: string;
  /** What stands on every sheet. */
  readonly note: string;
  readonly lines: readonly TemplateLine[];
  readonly texts: readonly TemplateText[];
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** The side of the boat on which a template is used; one is the mirror image of the other. */
export type Side = "port" | "starboard";

/** Mirrors a template left to right; its words stay readable. */
export function mirrored(template: Template): Template {
  const turn = ({ x, y }: Point): Point => ({ x: -x, y });
  return {
    ...template,
    lines: template.lines.map((line) => ({ ...line, points: line.points.map(turn) })),
    texts: template.texts.map((text) => ({
      ...text,
      at: turn(text.at),
      anchor: text.anchor === "middle" ? "middle" : text.anchor === "end" ? "start" : "end",
    })),
    left: -template.right,
    right: -template.left,
  };
}
