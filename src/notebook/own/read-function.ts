import type { AnyDefinition } from "../../formula/definition";
import { say } from "../../words/say";
import type { Page, Row } from "../model";
import { part } from "./function-page";
import type { OwnFunction, OwnMistake } from "./own-function";
import { RowMistake, sourceOf } from "./read-rows";
import { noSource, Reading } from "./reading";

/**
 * Reads the function that begins in a row of a function page and goes on to the next one.
 *
 * @param name what it is called, held to be free.
 * @param refused why the name cannot be taken.
 */
export function readFunction(
  page: Page,
  name: string,
  from: number,
  to: number,
  refused: string | undefined,
): OwnFunction {
  const reading = new Reading();
  const head = page.rows[from] as Row;
  const about = { name, page: page.name, row: from };
  const mistakes: OwnMistake[] = [];
  const title = (head[part.why] ?? "").trim();
  if (refused !== undefined) mistakes.push({ row: from, sentence: refused });
  else if (title === "")
    mistakes.push({ row: from, sentence: say`${name}: say in the column Why what the function gives` });
  const source = sourceOf(head[part.source] ?? "");
  if (source) reading.sources.push(source);
  for (let line = from + 1; line < to; line++) {
    const row = page.rows[line] as Row;
    if (row.every((text) => text === "")) continue;
    try {
      reading.row(row, line);
    } catch (cause) {
      if (!(cause instanceof RowMistake)) throw cause;
      mistakes.push({ row: line, sentence: cause.message });
      reading.excuse(row);
    }
  }
  if (!reading.isWhole && mistakes[0]?.row !== from) {
    mistakes.unshift({ row: from, sentence: say`${name}: no row is its result; name the last step result` });
  }
  if (mistakes.length > 0) return { ...about, definition: undefined, mistakes, exampleRows: [], withoutSource: [] };
  if (reading.sources.length === 0) reading.withoutSource.push(from);
  const definition = {
    name,
    title,
    args: reading.args,
    constants: reading.constants,
    steps: reading.steps,
    valid: reading.valid || "Nothing is said of where it may be used.",
    sources: reading.sources.length > 0 ? reading.sources : [noSource],
    examples: reading.examples,
    ...(reading.caution && { caution: reading.caution }),
    ownOf: page.name,
  } as unknown as AnyDefinition;
  const { exampleRows, withoutSource } = reading;
  return { ...about, definition, mistakes, exampleRows, withoutSource };
}
