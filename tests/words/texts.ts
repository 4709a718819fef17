import { relative } from "node:path";
import { filesOf, type Node, nameOf, source, treeOf, walk } from "./source-tree";

/** A text of the source that is said in the language of the person. */
export interface SaidText {
  readonly key: string;
  /** Whether it counts, and so needs a form for each number that a language tells apart. */
  readonly counts: boolean;
  readonly file: string;
}

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
