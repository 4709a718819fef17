import { firstOption, isOptionPage, lead, type Notebook, type Position, textAt } from "../../src/notebook/model";
import { rowKind } from "../../src/notebook/rows";
import { type Chain, plainOf, type TypedCell } from "../../src/study/kernel/chain";
import type { Plain } from "../../src/study/kernel/plain";
import { pick } from "../formula/random-expression";

/** All calculated rows of the option pages, or of those named, for one option's column. */
export function resultsOf(notebook: Notebook, column: number, pages?: readonly string[]): Position[] {
  return notebook.pages
    .filter((page) => isOptionPage(page) && (pages === undefined || pages.includes(page.name)))
    .flatMap((page) =>
      page.rows.flatMap((cells, row) =>
        ["result", "check"].includes(rowKind(page, row)) && cells[lead.key] !== ""
          ? [{ page: page.id, row, column }]
          : [],
      ),
    );
}

/** What an input might be instead: the words of the other options, its choices, or a number near its own. */
function other(
  random: () => number,
  notebook: Notebook,
  input: TypedCell,
  { near = 0.3, whole = 0.7, picks = true }: RandomWishes,
): Plain {
  const page = notebook.pages[input.cell.sheet];
  const choices = notebook.about.rows?.[input.name]?.choices;
  if (!picks && (choices || typeof input.value !== "number")) return input.value;
  if (choices) return plainOf(String(pick(random, choices)));
  if (typeof input.value === "number") {
    const value = input.value * (1 + near * (random() - 0.5)) + (input.value === 0 && random() < 0.2 ? random() : 0);
    // A cell takes fifteen digits; more would be text.
    return Number.isInteger(input.value) && random() < whole ? Math.round(value) : Number(value.toPrecision(14));
  }
  if (typeof input.value !== "string" || !page) return input.value;
  return plainOf(textAt(page, input.cell.row, firstOption + Math.floor(random() * 3)));
}

// The largest that is written without a power of ten has fifteen digits, for a cell takes no more as a number.
const ends: readonly Plain[] = [0, -1, 1e-300, 1e300, -1e300, 5e-324, 1e14, 0.5, 90, -90];
const odd: readonly Plain[] = [...ends, null, "abc", "yes", true, false];

export interface RandomWishes {
  /** How far numbers go, as a share: 0.3 is 15 % up or down. */
  readonly near?: number;
  /** Share of inputs that get a hostile number. */
  readonly wild?: number;
  /** Share of inputs that get anything at all, text and blanks included. */
  readonly kindless?: number;
  /** Share of whole numbers that stay whole. */
  readonly whole?: number;
  /** Whether words and choices change too. */
  readonly picks?: boolean;
}

/** One random set of inputs. */
export function randomInputs(
  random: () => number,
  notebook: Notebook,
  chain: Chain,
  wishes: RandomWishes = {},
): Plain[] {
  const { wild = 0, kindless = 0 } = wishes;
  return chain.inputs.map((input) => {
    if (random() < kindless) return pick(random, odd);
    if (typeof input.value === "number" && random() < wild) return pick(random, ends);
    return other(random, notebook, input, wishes);
  });
}

/** The text that a cell would hold. */
export function typedText(value: Plain): string {
  if (value === null) return "";
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return String(value);
}
