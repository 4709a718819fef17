import { builtInNames } from "../../engine/engine";
import type { OwnCall } from "../../engine/plugin";
import type { AnyDefinition } from "../../formula/definition";
import { say } from "../../words/say";
import type { Notebook, Page } from "../model";
import { type FindFunction, shippedFunction } from "../named-function";
import { functionPages, part } from "./function-page";
import { mistakeSentence, type OwnFunction } from "./own-function";
import { readFunction } from "./read-function";

const builtIn = new Set(builtInNames());

/** Why a function cannot have this name; undefined where it can. */
export function whyNotNamed(name: string): string | undefined {
  if (!/^[A-Z][A-Z0-9]*(?:\.[A-Z0-9]+)+$/.test(name) || name.length > 60) {
    return say`"${name}" cannot be a function's name; write two words in capitals with a point between them, as in YARD.DROP`;
  }
  if (shippedFunction(name)) return say`${name} is a shipped function; give your own another name`;
  return builtIn.has(name) ? say`${name} is a function of the formula language; give your own another name` : undefined;
}

/** By page, since most edits leave the function pages alone; pages are never changed in place. */
const known = new WeakMap<Page, readonly OwnFunction[]>();

function functionsOn(page: Page): readonly OwnFunction[] {
  const before = known.get(page);
  if (before) return before;
  const starts = page.rows.flatMap((row, line) => (line > 0 && row[part.part] === "function" ? [line] : []));
  const found = starts.map((from, i) => {
    const name = (page.rows[from]?.[part.name] ?? "").trim();
    return readFunction(page, name, from, starts[i + 1] ?? page.rows.length, whyNotNamed(name));
  });
  const first = starts[0] ?? page.rows.length;
  const stray = page.rows.findIndex((row, line) => line > 0 && line < first && row.some((text) => text !== ""));
  const all: readonly OwnFunction[] =
    stray < 0
      ? found
      : [
          {
            name: "",
            page: page.name,
            row: stray,
            definition: undefined,
            mistakes: [
              {
                row: stray,
                sentence: say`this row belongs to no function; begin with a row whose Part is function`,
              },
            ],
            exampleRows: [],
            withoutSource: [],
          },
          ...found,
        ];
  known.set(page, all);
  return all;
}

/** A name that is there already names the first. */
function withoutTwins(all: readonly OwnFunction[]): OwnFunction[] {
  const seen = new Map<string, OwnFunction>();
  return all.map((one) => {
    const twin = seen.get(one.name);
    if (!twin) {
      seen.set(one.name, one);
      return one;
    }
    const sentence = say`${one.name} is defined in row ${twin.row + 1} of ${twin.page} already; give one of them another name`;
    const others = one.mistakes.filter(({ row }) => row !== one.row);
    return { ...one, definition: undefined, mistakes: [{ row: one.row, sentence }, ...others] };
  });
}

const ofNotebook = new WeakMap<readonly Page[], readonly OwnFunction[]>();

/** The functions that a notebook defines itself, with the mistakes in them, in the order of pages and rows. */
export function ownFunctions(notebook: Pick<Notebook, "pages">): readonly OwnFunction[] {
  const before = ofNotebook.get(notebook.pages);
  if (before) return before;
  const all = withoutTwins(functionPages(notebook).flatMap(functionsOn));
  ofNotebook.set(notebook.pages, all);
  return all;
}

/** Those that can be called. */
export const ownDefinitions = (notebook: Pick<Notebook, "pages">): readonly AnyDefinition[] =>
  ownFunctions(notebook).flatMap(({ definition }) => definition ?? []);

const finders = new WeakMap<readonly Page[], FindFunction>();

/** Finds the shipped functions and a notebook's own alike. */
export function finderOf(notebook: Pick<Notebook, "pages">): FindFunction {
  const before = finders.get(notebook.pages);
  if (before) return before;
  const own = new Map(ownDefinitions(notebook).map((definition) => [definition.name as string, definition]));
  const find: FindFunction = (name) => shippedFunction(name) ?? own.get(name);
  finders.set(notebook.pages, find);
  return find;
}

/** What the engine needs to know of them: those with a mistake answer with its sentence. */
export function ownCalls(notebook: Pick<Notebook, "pages">): readonly OwnCall[] {
  const calls = new Map<string, OwnCall>();
  for (const {
    name,
    page,
    definition,
    mistakes: [mistake],
  } of ownFunctions(notebook)) {
    if (calls.has(name) || whyNotNamed(name)) continue;
    calls.set(
      name,
      definition ? { name, definition } : { name, sentence: mistake ? mistakeSentence(page, mistake) : "" },
    );
  }
  return [...calls.values()];
}

/** Whether two states of a notebook have the same functions, so that an engine of one serves the other. */
export function sameFunctions(a: Notebook, b: Notebook): boolean {
  const [one, other] = [functionPages(a), functionPages(b)];
  return (
    one.length === other.length && one.every((page, i) => page.rows === other[i]?.rows && page.name === other[i]?.name)
  );
}
