import { contentOf, isFormula } from "../../engine/content";
import type { LiveNotebook } from "../../notebook/live";
import { firstOption, isOptionPage, lead, type Page, textAt } from "../../notebook/model";
import { isFunctionPage } from "../../notebook/own/function-page";
import { rowKind } from "../../notebook/rows";
import { outcomeAt, outcomeInCell } from "../../notebook/verdict";
import { say } from "../../words/say";
import { rowUnits } from "../shown/row-units";
import { startOf } from "../shown/start-of";
import { unitText } from "../shown/unit-text";
import { valueText } from "../shown/value-text";
import { freeRowKind } from "./free-row";
import { functionLook } from "./function-look";
import type { Look, Shape } from "./look";

const blank: Look = { shape: "blank", text: "" };

function failure(value: { readonly sentence: string; readonly from: string }): Look {
  const sentence = value.from ? say`${value.sentence} (from ${value.from})` : value.sentence;
  return { shape: "error", text: value.from ? say`see ${value.from}` : value.sentence, sentence };
}

/** Words longer than this may run over several lines; sentences stand to the left. */
const longWord = 12;
const sentence = 24;

/** What the first column says of its row: a part's heading, a caution, a point where the work stops for a measurement. */
function labelShape(text: string): Shape {
  if (text.startsWith("CAUTION")) return "caution";
  return text.startsWith("HOLD") ? "hold" : "label";
}

function leadLook(live: LiveNotebook, page: Page, row: number, column: number): Look {
  const text = startOf(textAt(page, row, column));
  if (rowKind(page, row) === "heading") return { shape: "heading", text };
  switch (column) {
    case lead.quantity:
      return { shape: labelShape(text), text, isWrapped: true };
    case lead.key:
      return { shape: "key", text, isWrapped: true };
    case lead.unit:
      return { shape: "unit", text: unitText(rowUnits(live.notebook, page, row).unit) };
    default:
      return { shape: "basis", text, isWrapped: true };
  }
}

function optionLook(live: LiveNotebook, page: Page, row: number, column: number, decimals: number | undefined): Look {
  const text = textAt(page, row, column);
  const at = { page: page.id, row, column };
  const value = live.value(at);
  const kind = rowKind(page, row);
  const isRight = true;
  if (value.kind === "error") return { ...failure(value), isRight };
  if (kind === "heading") return { shape: "heading", text: "" };
  if (kind === "check") {
    const outcome = outcomeAt(live, at);
    if (outcome.kind === "none") return { ...blank, isRight };
    // The shape says that it is open; the words say why.
    if (outcome.kind === "open")
      return { shape: "open", text: outcome.why, sentence: outcome.why, isRight, isWrapped: true };
    return { shape: outcome.kind, text: outcomeInCell(outcome), margin: outcome.margin, isRight, isWrapped: true };
  }
  const isSpilled = text === "" && live.isSpilled(at);
  if (text === "" && !isSpilled)
    return kind === "input" ? { shape: "input", text: "", isRight } : { ...blank, isRight };
  const shape = isFormula(text) || isSpilled ? "result" : "input";
  const words =
    value.kind === "number" ? rowUnits(live.notebook, page, row).words(value.value, decimals) : valueText(value);
  const isWrapped = value.kind === "text" && words.length > longWord;
  return { shape, text: words, isRight: !isWrapped || words.length <= sentence, isSpilled, isWrapped };
}

/** Columns of a free sheet below which long words have the room to run over several lines. */
const fewColumns = 4;

/** What a line of proofs says, or the line that counts them: `272 of 272 agree`. */
function verdictOf(words: string): "holds" | "short" | undefined {
  const [, agree, of] = /^(\d+) of (\d+) agree$/.exec(words) ?? [];
  if (words === "agrees" || (agree !== undefined && agree === of)) return "holds";
  return words === "differs" || agree !== undefined ? "short" : undefined;
}

function freeLook(live: LiveNotebook, page: Page, row: number, column: number): Look {
  const text = textAt(page, row, column);
  const at = { page: page.id, row, column };
  const value = live.value(at);
  if (value.kind === "error") return failure(value);
  if (value.kind === "number") return { shape: "number", text: valueText(value), isRight: true };
  if (value.kind === "blank") return blank;
  const words = valueText(value);
  const verdict = isFormula(text) ? verdictOf(words) : undefined;
  if (verdict) return { shape: verdict, text: words };
  const kind = freeRowKind(page, row);
  const isOverNumbers = kind === "title" && contentOf(textAt(page, row + 1, column)).kind === "number";
  if (kind === "title") return { shape: "title", text: words, isRight: isOverNumbers };
  const isWrapped = words.length > sentence && (page.rows[0]?.length ?? 0) < fewColumns;
  return {
    shape: kind === "plain" ? "text" : kind,
    text: words,
    isSpilled: text === "" && live.isSpilled(at),
    isWrapped,
  };
}

/** How a cell of a page is shown. */
export function cellLook(
  live: LiveNotebook,
  page: Page,
  row: number,
  column: number,
  decimals: number | undefined,
): Look {
  if (isFunctionPage(page)) return functionLook(live, page, row, column);
  if (!isOptionPage(page)) return freeLook(live, page, row, column);
  return column < firstOption ? leadLook(live, page, row, column) : optionLook(live, page, row, column, decimals);
}
