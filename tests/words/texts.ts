import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { parseSync } from "vite";

const source = join(import.meta.dirname, "../../src");

/** A text of the source that is said in the language of the person. */
export interface SaidText {
  readonly key: string;
  /** Whether it counts, and so needs a form for each number that a language tells apart. */
  readonly counts: boolean;
  readonly file: string;
}

type Node = Readonly<Record<string, unknown>> & { readonly type: string };

const isNode = (value: unknown): value is Node =>
  typeof value === "object" && value !== null && typeof (value as Node).type === "string";

const childrenOf = (node: Node): Node[] => Object.values(node).flat().filter(isNode);

const nameOf = (node: unknown): unknown => (isNode(node) ? node.name : undefined);

const textOf = (node: Node | undefined): string | undefined =>
  node?.type === "Literal" && typeof node.value === "string" ? node.value : undefined;

/** `plausible {0} to {1}`, as the catalogue has it. */
const keyOf = (template: Node): string =>
  (template.quasis as Node[])
    .map((quasi, i) => `${i > 0 ? `{${i - 1}}` : ""}${(quasi.value as { cooked: string }).cooked}`)
    .join("");

/** What one node says, if it says something: a template of `say`, a text of `said`, two forms of `counted`. */
function textsOf(node: Node): Omit<SaidText, "file">[] {
  if (node.type === "TaggedTemplateExpression" && ["say", "sayAround"].includes(String(nameOf(node.tag)))) {
    return [{ key: keyOf(node.quasi as Node), counts: false }];
  }
  if (node.type !== "CallExpression") return [];
  const name = nameOf(node.callee);
  const [first, second, third] = node.arguments as Node[];
  const said = name === "said" ? textOf(first) : undefined;
  if (said !== undefined) return [{ key: said, counts: false }];
  const one = name === "counted" ? textOf(second) : undefined;
  return one === undefined ? [] : [{ key: `${one} / ${textOf(third) ?? `${one}s`}`, counts: true }];
}

function walk(node: Node, take: (node: Node) => void): void {
  take(node);
  for (const child of childrenOf(node)) walk(child, take);
}

/** All files of a folder of the source. */
const filesOf = (folder: string): string[] =>
  readdirSync(join(source, folder), { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .map((file) => join(source, folder, file));

/** The tree of a file of the source. */
const treeOf = (file: string): Node => parseSync(file, readFileSync(file, "utf8")).program as unknown as Node;

/** All texts that the source says. */
export function saidTexts(): SaidText[] {
  const found: SaidText[] = [];
  for (const file of filesOf("")) {
    walk(treeOf(file), (node) => {
      found.push(...textsOf(node).map((one) => ({ ...one, file: relative(source, file) })));
    });
  }
  return found;
}
