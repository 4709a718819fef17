import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parseSync } from "vite";

export const source = join(import.meta.dirname, "../../src");

/** A part of the tree of a source file. */
export type Node = Readonly<Record<string, unknown>> & { readonly type: string };

const isNode = (value: unknown): value is Node =>
  typeof value === "object" && value !== null && typeof (value as Node).type === "string";

const childrenOf = (node: Node): Node[] => Object.values(node).flat().filter(isNode);

/** The name of an identifier. */
export const nameOf = (node: unknown): unknown => (isNode(node) ? node.name : undefined);

/** Takes a part and all parts in it, the outer before the inner. */
export function walk(node: Node, take: (node: Node) => void): void {
  take(node);
  for (const child of childrenOf(node)) walk(child, take);
}

/** All files of a folder of the source. */
export const filesOf = (folder: string): string[] =>
  readdirSync(join(source, folder), { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .map((file) => join(source, folder, file));

/** The tree of a file of the source. */
export const treeOf = (file: string): Node => parseSync(file, readFileSync(file, "utf8")).program as unknown as Node;
