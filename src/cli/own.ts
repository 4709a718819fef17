import { inOrder } from "../formula/call";
import { explainCall } from "../formula/explain";
import type { Notebook } from "../notebook/model";
import { pageById } from "../notebook/model";
import { type AddedFunction, beginFunction, copyFunction } from "../notebook/own/add-function";
import { mistakeSentence, type OwnFunction } from "../notebook/own/own-function";
import { finderOf, ownFunctions } from "../notebook/own/own-functions";
import { printPage } from "../notebook/page-csv";
import { say } from "../words/say";
import { readFolder, writeFolder } from "./folder";
import { Misuse, type Output } from "./output";

export interface OwnWishes {
  /** The function that is written down anew, and the name that the copy gets. */
  readonly copy: string | undefined;
  readonly as: string | undefined;
  /** Name of a small function to begin with. */
  readonly begin: string | undefined;
  /** Folder for the notebook with the new function; its rows are only shown when left out. */
  readonly write: string | undefined;
}

function line({ name, page, row, definition, mistakes }: OwnFunction): string {
  if (!definition) return mistakes.map((mistake) => mistakeSentence(page, mistake)).join("\n");
  const examples = definition.examples.map((example) => {
    const { result, refusal } = explainCall(definition, inOrder(definition, example.given));
    const isNear =
      typeof example.expect === "number"
        ? Math.abs(Number(result) - example.expect) <= example.within
        : result === example.expect;
    return `    ${say`example: ${refusal?.sentence ?? String(result)}, expected ${String(example.expect)}: ${isNear && !refusal ? say`agrees` : say`disagrees`}`}`;
  });
  return [`${name}  ${definition.title} (${say`${page}, row ${row + 1}`})`, ...examples].join("\n");
}

function added(notebook: Notebook, { copy, as, begin }: OwnWishes): AddedFunction {
  if (begin !== undefined) return beginFunction(notebook, begin.toUpperCase());
  if (copy === undefined || as === undefined)
    throw new Misuse(say`--copy NAME needs --as NEW.NAME, for example --copy CONDUCTOR.DROP --as YARD.DROP.`);
  const definition = finderOf(notebook)(copy.toUpperCase());
  if (!definition) throw new Misuse(say`There is no function ${copy}; \`list\` prints all names.`);
  return copyFunction(notebook, definition, as.toUpperCase());
}

/** Lists the functions that a notebook defines itself, or writes another one down. */
export function ownOnTerminal(output: Output, folder: string, wishes: OwnWishes): void {
  const notebook = readFolder(output.path(folder));
  if (wishes.copy === undefined && wishes.begin === undefined && wishes.as === undefined) {
    const own = ownFunctions(notebook);
    output.write(
      `${own.length > 0 ? own.map(line).join("\n") : say`This notebook defines no functions of its own.`}\n`,
    );
    return;
  }
  const made = added(notebook, wishes);
  const page = pageById(made.notebook, made.page);
  output.write(printPage(page?.rows.slice(made.row) ?? []));
  if (wishes.write === undefined) return;
  writeFolder(output.path(wishes.write), made.notebook);
  output.write(`${say`written to ${wishes.write}, page ${page?.name ?? ""}, row ${made.row + 1}`}\n`);
}
