import type { Parsed, ParsedCell } from "../../engine/parsed";
import type { OwnCall } from "../../engine/plugin";
import { say } from "../../words/say";
import { blank, type Node } from "./node";

/** A formula's part: one value, or a block of values row by row. */
export type Part = Node | Block;
export interface Block {
  readonly rows: readonly (readonly Node[])[];
}

/** What a function's lowering may ask for: the node of a cell, and the lowering of an argument. */
export interface Home {
  readonly cell: (at: ParsedCell) => Node;
  readonly part: (tree: Parsed) => Part;
  /** A function of the notebook's own; undefined for every other name. */
  readonly own: (name: string) => OwnCall | undefined;
}

export type Call = Extract<Parsed, { kind: "call" }>;
/** How a function of the engine is calculated. @throws NotTaken */
export type Lowering = (call: Call, home: Home) => Part;

/** Something that the kernel does not take in; becomes a refusal with the cell's name. */
export class NotTaken extends Error {
  override readonly name = "NotTaken";
}

export const isBlock = (part: Part): part is Block => "rows" in part;

/** A block's values row by row, or the one value. */
export const itemsOf = (part: Part): readonly Node[] => (isBlock(part) ? part.rows.flat() : [part]);

/** The tree without the brackets around it. */
export const bare = (tree: Parsed): Parsed => (tree.kind === "brackets" ? bare(tree.of) : tree);

/**
 * Works cell by cell where some parts are blocks, as the engine does: a single row or column goes with every other.
 *
 * @throws NotTaken for blocks of different size.
 */
export function spread(parts: readonly Part[], make: (nodes: readonly Node[]) => Node): Part {
  const blocks = parts.filter(isBlock);
  if (blocks.length === 0) return make(parts as readonly Node[]);
  const height = Math.max(...blocks.map(({ rows }) => rows.length));
  const width = Math.max(...blocks.map(({ rows }) => rows[0]?.length ?? 0));
  const at = (part: Part, row: number, column: number): Node => {
    if (!isBlock(part)) return part;
    const line = part.rows[part.rows.length === 1 ? 0 : row];
    const node = line?.[line.length === 1 ? 0 : column];
    if (!node) throw new NotTaken(say`blocks of different size are put together`);
    return node;
  };
  const rows = Array.from({ length: height }, (_, row) =>
    Array.from({ length: width }, (_, column) => make(parts.map((part) => at(part, row, column)))),
  );
  return height === 1 && width === 1 ? (rows[0]?.[0] ?? blank) : { rows };
}
