import { ink, soft } from "./ink";
import { letterSize, lineHeight, text, wrap } from "./letters";
import { circle, line, type Point, polyline } from "./mark";
import { spread } from "./spread";

/** Words beside a drawing, led to the place they speak of. */
export interface Note {
  readonly at: Point;
  readonly says: string;
  readonly fill?: string;
  readonly strong?: boolean;
}

export interface NoteColumn {
  /** Where the words begin, or end for a column on the left. */
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
  readonly width: number;
  readonly side?: "left" | "right";
}

const gap = 4;

const heightOf = (note: Note, width: number): number => wrap(note.says, width).length * lineHeight + gap;

/** Least height of a column that holds these words. */
export const notesHeight = (list: readonly Note[], width: number): number =>
  list.reduce((sum, note) => sum + heightOf(note, width), 0);

/** The words in one column, moved apart so that none covers another, each with a thin line to its place. */
export function notes(list: readonly Note[], column: NoteColumn): string {
  const { x, top, bottom, width, side = "right" } = column;
  const lines = list.map(({ says }) => wrap(says, width));
  const middles = spread(
    list.map((note) => ({ at: note.at.y, size: heightOf(note, width) })),
    top,
    bottom,
  );
  const away = side === "right" ? -1 : 1;
  return list
    .map(({ at, fill = ink, strong }, i) => {
      const rows = lines[i] as string[];
      const middle = middles[i] as number;
      const first = middle - ((rows.length - 1) * lineHeight) / 2 + letterSize * 0.36;
      const words = rows.map((row, k) =>
        text({ x, y: first + k * lineHeight }, row, {
          fill,
          ...(strong && { strong }),
          anchor: side === "right" ? "start" : "end",
        }),
      );
      const end = { x: x + away * 3, y: middle };
      const knee = { x: x + away * 12, y: middle };
      const lead =
        polyline(Math.abs(at.y - middle) < 0.5 ? [at, end] : [at, knee, end], { width: 0.5, stroke: soft }) +
        circle(at, 1.3, { width: 0.5, stroke: soft, fill: soft });
      return [lead, ...words].join("");
    })
    .join("\n");
}

/** Words that hang below places on a scale, each in a row of its own, the rightmost highest. */
export function hangingNotes(list: readonly Note[], top: number, from: number): string {
  return [...list]
    .sort((a, b) => b.at.x - a.at.x)
    .map(({ at, says, fill = ink, strong }, row) => {
      const y = top + row * lineHeight;
      return (
        line({ x: at.x, y: from }, { x: at.x, y: y + 1 }, { width: 0.5, stroke: soft }) +
        text({ x: at.x + 4, y }, says, { fill, ...(strong && { strong }) })
      );
    })
    .join("\n");
}
