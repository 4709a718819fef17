import type { LiveNotebook } from "../notebook/live";
import { type Notebook, optionsOf } from "../notebook/model";
import { usualPage } from "../notebook/usual-page";
import { said, say } from "../words/say";
import type { Figure } from "./figure";
import { type FigureName, kinds } from "./kinds";
import { offsetPageOf } from "./offset-page";
import { Readings } from "./readings";

/** The figures beside each page, in the order in which they stand. */
const pages: Readonly<Record<string, readonly FigureName[]>> = {
  Boat: ["waterline view", "hull section"],
  "Side force": ["push against wind"],
  Tunnel: ["hull section", "waterline view", "hole square", "developed tube", "cut lines"],
  Fit: ["motor space", "ground outline"],
  Joint: ["joint plies", "ground outline"],
  Supply: ["voltage budget", "conductor warmth", "fuse window"],
  Estimate: ["cost spread"],
  Compare: ["options compared"],
};

/** The figures that stand beside a page, by the name it has now. */
export const figureNames = (notebook: Notebook, page: string): readonly FigureName[] =>
  Object.entries(pages).find(
    ([name]) => usualPage(notebook.pages, name)?.name.toLowerCase() === page.toLowerCase(),
  )?.[1] ?? [];

const told = 3;

/** One figure of a notebook for one option, or one sentence that names the rows which are missing. */
export function figureOf(live: LiveNotebook, name: FigureName, option: string): Figure {
  const title = said(name.charAt(0).toUpperCase() + name.slice(1));
  const options = optionsOf(live.notebook);
  if (!options.includes(option)) {
    return { title, sentence: say`Not drawn. There is no option "${option}" (there are ${options.join(", ")}).` };
  }
  const read = new Readings(live, option);
  const draw = kinds[name](read, live, option);
  if (read.missing.length === 0) return draw();
  const more = read.missing.length - told;
  const list = read.missing.slice(0, told).join("; ");
  return { title, sentence: say`Not drawn for ${option}. ${list}${more > 0 ? say`; and ${more} more` : ""}.` };
}

/** The figures of a page for one option, drawn from the notebook as it stands. */
export const figuresOf = (live: LiveNotebook, page: string, option: string): readonly Figure[] =>
  figureNames(live.notebook, page)
    // A curved side is drawn where somebody has measured it.
    .filter((name) => name !== "cut lines" || offsetPageOf(live, option) !== undefined)
    .map((name) => figureOf(live, name, option));
