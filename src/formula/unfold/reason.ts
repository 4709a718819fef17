import { said, say } from "../../words/say";
import { words } from "../arguments";
import type { AnyDefinition } from "../definition";
import type { Step } from "../steps";
import { symbolText } from "../symbol-name";

/** What a step does that rows of plain formulas cannot say; undefined for algebra. */
function work(step: Step): string | undefined {
  switch (step.kind) {
    case "lookup":
      return say`reads the table "${said(step.table.title)}"`;
    case "first":
      return say`looks for the first size in a table that is enough`;
    case "between":
      return say`reads between the points of a table or of two ranges of cells`;
    case "mean":
      return say`is a mean over ${step.points} points`;
    case "sum":
      return say`is a sum whose number of terms follows from the inputs`;
    case "total":
      return say`takes every cell of the range ${words(step.over)}`;
    case "surface":
      return say`reads a surface through measured offsets`;
    case "convert":
      return say`converts units, whose names are inputs`;
    default:
      return undefined;
  }
}

/** Why a function cannot be unfolded into rows, as one sentence; undefined where it can. */
export function whyNotUnfolded(definition: AnyDefinition): string | undefined {
  for (const step of definition.steps) {
    const what = work(step);
    if (what && "symbol" in step) {
      return say`${definition.name} cannot be unfolded: its step ${symbolText(step.symbol)} ${what}, which plain formulas in one row for each step do not give; copy the function under a name of your own to change its other steps.`;
    }
  }
  for (const [name, argument] of Object.entries(definition.args)) {
    if (argument.kind === "range" || argument.kind === "key") {
      return say`${definition.name} cannot be unfolded: ${words(name)} is ${argument.kind === "range" ? say`a range of cells` : say`a size by its name`}, which plain formulas in one row for each step do not take.`;
    }
  }
  return undefined;
}
