import { relative } from "node:path";
import { filesOf, type Node, nameOf, source, treeOf, walk } from "./source-tree";

/** A text of the source that a person would see in English in every language. */
export interface BareText {
  readonly file: string;
  readonly text: string;
}

/** Stands for what is put in. */
const gap = "\uFFFC";

const joined = (template: Node): string =>
  (template.quasis as Node[]).map((quasi) => (quasi.value as { cooked: string }).cooked).join(gap);

const plain = (node: Node | undefined): string | undefined =>
  node?.type === "Literal" && typeof node.value === "string"
    ? node.value
    : node?.type === "TemplateLiteral"
      ? joined(node)
      : undefined;

/** Two letters in a row make a word; one stands for a quantity. */
const hasWord = (text: string): boolean => /\p{L}{2}/u.test(text.replaceAll(gap, " "));

/** Texts between tags, and of attributes that are read out or shown. */
function textsOfMarkup(markup: string): string[] {
  const bare = markup.replace(/<!--.*?-->/gs, "").replace(/<style>.*?<\/style>/gs, "");
  const between = bare
    .replace(/<[^<>]*>/g, "\n")
    .replaceAll(gap, "\n")
    .split("\n");
  const shown = [...bare.matchAll(/\b(?:aria-label|title|placeholder|alt|aria-description)="([^"]*)"/g)].map(
    ([, text = ""]) => text,
  );
  return [...between, ...shown].map((text) => text.trim()).filter(hasWord);
}

/** Calls whose argument a person hears or reads, and errors whose message one reads. */
const speaks = new Set(["announce", "say"]);
const sentences = new Set(["Refusal", "Misuse", "OutOfTime", "Stopped", "Fault", "NotTaken"]);
const shownProperties = new Set(["textContent", "innerText", "title", "ariaLabel", "placeholder", "alt"]);

/** The branches of `a ? "one" : "two"` and `a ?? "none"`, each by itself. */
function branches(node: Node | undefined): (Node | undefined)[] {
  if (node?.type === "ConditionalExpression") {
    return [...branches(node.consequent as Node), ...branches(node.alternate as Node)];
  }
  return node?.type === "LogicalExpression"
    ? [...branches(node.left as Node), ...branches(node.right as Node)]
    : [node];
}

const bareIn = (nodes: readonly (Node | undefined)[]): string[] =>
  nodes.flatMap(branches).flatMap((node) => {
    const text = plain(node);
    return text !== undefined && hasWord(text) ? [text] : [];
  });

/** Whether what is put in there is read: between tags, or in an attribute that is shown. */
const isShownAfter = (before: string): boolean =>
  !/[\w-]=["']?[^"'<>]*$/.test(before) || /\b(aria-label|title|placeholder|alt)=["']?[^"'<>]*$/.test(before);

function bareOf(node: Node): string[] {
  switch (node.type) {
    case "TaggedTemplateExpression": {
      if (!["html", "svg"].includes(String(nameOf(node.tag)))) return [];
      const quasi = node.quasi as Node;
      const before = (quasi.quasis as Node[]).map((part) => (part.value as { cooked: string }).cooked);
      const shown = (quasi.expressions as Node[]).filter((_, i) => isShownAfter(before[i] ?? ""));
      return [...textsOfMarkup(joined(quasi)), ...bareIn(shown)];
    }
    case "NewExpression":
      return sentences.has(String(nameOf(node.callee))) ? bareIn((node.arguments as Node[]).slice(-1)) : [];
    case "CallExpression": {
      const callee = node.callee as Node;
      const name = String(nameOf(callee) ?? nameOf(callee.property));
      const [first, second] = node.arguments as Node[];
      // `say("error", …)` inside the audit gives a level, not a sentence.
      if (speaks.has(name)) return bareIn([first]).filter((text) => /\s/.test(text));
      // A box on a sheet of paper and its words, a text in a drawing.
      if (name === "field") return bareIn([first]);
      if (name === "text") return bareIn([second]);
      const isShown = name === "setAttribute" && /^(aria-label|title|placeholder|alt)$/.test(plain(first) ?? "");
      return isShown ? bareIn([second]) : [];
    }
    // What a note in a drawing or a template says.
    case "Property":
      return nameOf(node.key) === "says" ? bareIn([node.value as Node]) : [];
    case "AssignmentExpression": {
      const left = node.left as Node;
      return left.type === "MemberExpression" && shownProperties.has(String(nameOf(left.property)))
        ? bareIn([node.right as Node])
        : [];
    }
    // A sentence that is put together and given away: it ends like one.
    case "TemplateLiteral":
      return /^\p{Lu}[^\n]*\p{L}{2,} [^\n]*\p{L}{2,}[^\n]*\.$/u.test(joined(node)) ? [joined(node)] : [];
    case "Literal":
      return typeof node.value === "string" && /^\p{Lu}\p{Ll}+,? \p{Ll}{2,} .*\.$/u.test(node.value)
        ? [node.value]
        : [];
    default:
      return [];
  }
}

/** All texts of a folder of the source that are shown, read out or thrown without being said. */
export function bareTexts(folder: string): readonly BareText[] {
  const found: BareText[] = [];
  for (const file of filesOf(folder)) {
    const said = new Set<unknown>();
    walk(treeOf(file), (node) => {
      // What stands in a tag of its own is judged there.
      if (node.type === "TaggedTemplateExpression") said.add(node.quasi);
      if (said.has(node)) return;
      const name = relative(source, file);
      found.push(...bareOf(node).map((text) => ({ file: name, text: text.replaceAll(gap, "{}") })));
    });
  }
  return found.filter((one, i) => found.findIndex(({ file, text }) => file === one.file && text === one.text) === i);
}
