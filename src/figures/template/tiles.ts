import { overlap, type Paper, papers, rim, strip } from "./paper";
import type { Template } from "./template";

/** One sheet of a template: the part of it that it shows, in the template's own mm. */
export interface Tile {
  /** From 1, left to right. */
  readonly column: number;
  /** From 1, top to bottom. */
  readonly row: number;
  readonly left: number;
  readonly top: number;
}

export interface Tiling {
  /** Size of a sheet as it lies, mm. */
  readonly width: number;
  readonly height: number;
  /** Size of the part of the template that a sheet shows, mm. */
  readonly shownWidth: number;
  readonly shownHeight: number;
  readonly columns: number;
  readonly rows: number;
  readonly tiles: readonly Tile[];
}

const count = (length: number, shown: number): number =>
  length <= shown ? 1 : 1 + Math.ceil((length - shown) / (shown - overlap) - 1e-9);

function lay(template: Template, width: number, height: number): Tiling {
  const shownWidth = width - 2 * rim;
  const shownHeight = height - 2 * rim - strip;
  const wide = template.right - template.left;
  const high = template.top - template.bottom;
  const columns = count(wide, shownWidth);
  const rows = count(high, shownHeight);
  // What is left over is shared, so that the template lies in the middle of its sheets.
  const spareX = shownWidth + (columns - 1) * (shownWidth - overlap) - wide;
  const spareY = shownHeight + (rows - 1) * (shownHeight - overlap) - high;
  const tiles = Array.from({ length: rows * columns }, (_, i): Tile => {
    const column = i % columns;
    const row = Math.floor(i / columns);
    return {
      column: column + 1,
      row: row + 1,
      left: template.left - spareX / 2 + column * (shownWidth - overlap),
      top: template.top + spareY / 2 - row * (shownHeight - overlap),
    };
  });
  return { width, height, shownWidth, shownHeight, columns, rows, tiles };
}

/** Lays a template over sheets of paper, upright or on their side, whichever takes fewer. */
export function tile(template: Template, paper: Paper): Tiling {
  const { width, height } = papers[paper];
  const upright = lay(template, width, height);
  const lying = lay(template, height, width);
  return lying.tiles.length < upright.tiles.length ? lying : upright;
}
