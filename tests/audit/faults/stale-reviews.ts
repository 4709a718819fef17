import { placesOf as reviewPlacesOf } from "../../../src/audit/review";
import { isFormula } from "../../../src/engine/content";
import { feedsOf } from "../../../src/notebook/feeds";
import { firstOption, isOptionPage, type Notebook, type Position, pageById, textAt } from "../../../src/notebook/model";
import { pick } from "../../formula/random-expression";
import { placesOf, type Random, written } from "./fault";
import type { MakeFault } from "./input-faults";

/** A cell some steps behind another one; the cell itself when nothing feeds it. */
function somewhereBehind(random: Random, notebook: Notebook, from: Position): Position {
  const behind = feedsOf(notebook)
    .feeding(from)
    .filter(({ page: id, row, column }) => {
      const page = pageById(notebook, id);
      return page && isOptionPage(page) && row > 0 && column >= firstOption && textAt(page, row, column) !== "";
    });
  return behind.length === 0
    ? from
    : random() < 0.25
      ? pick(random, behind)
      : somewhereBehind(random, notebook, pick(random, behind));
}

/** Another number, or another formula, in a cell. */
const changed = (text: string): string =>
  isFormula(text) ? `=(${text.slice(1)})*1` : Number.isNaN(Number(text)) ? `${text} (2)` : String(Number(text) * 1.01);

/** A cell, a row or a page that was ticked before something behind it changed. */
export function staleReview(notebook: Notebook): MakeFault {
  const formulas = placesOf(notebook, ({ text }) => isFormula(text));
  return (random) => {
    const result = pick(random, formulas);
    const places = reviewPlacesOf(notebook, result);
    const ticked = places && pick(random, [places.cell, places.row ?? places.cell, places.page]);
    const at = somewhereBehind(random, notebook, result);
    const page = pageById(notebook, at.page);
    if (!ticked || !page) return undefined;
    return {
      cells: [written(at, changed(textAt(page, at.row, at.column)))],
      evidence: { seenBy: "the tick, which was given to other texts" },
      ticked,
    };
  };
}
