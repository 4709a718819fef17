import { mathArity } from "../../formula/expression";
import { say } from "../../words/say";
import type { Page } from "../model";
import { part } from "./function-page";

/** A word that a formula of a function page can use, and what it stands for. */
export interface FormulaName {
  readonly name: string;
  readonly about: string;
  /** What it takes in brackets follows. */
  readonly isCall: boolean;
}

const named = new Set(["argument", "constant", "step"]);
const formulas = new Set(["step", "result", "require"]);

/**
 * The words that the formula of a row can use: the names in the rows above it, back to where its function begins, the
 * nearest first, then what the language of formulas has. Empty for rows whose formula is none.
 */
export function namesAbove(page: Page, row: number): readonly FormulaName[] {
  if (!formulas.has(page.rows[row]?.[part.part] ?? "")) return [];
  const names: FormulaName[] = [];
  for (let line = row - 1; line > 0; line--) {
    const cells = page.rows[line] ?? [];
    const kind = cells[part.part] ?? "";
    if (kind === "function") break;
    const name = cells[part.name] ?? "";
    if (!named.has(kind) || name === "") continue;
    const unit = cells[part.unit] ?? "";
    names.push({ name, about: [cells[part.why], unit === "1" ? "" : unit].filter(Boolean).join(", "), isCall: false });
  }
  const calls = Object.entries(mathArity).map(([name, count]) => ({
    name,
    about: count === 1 ? say`of one value` : say`of ${count} values`,
    isCall: true,
  }));
  return [...names, { name: "pi", about: say`circumference over diameter`, isCall: false }, ...calls];
}
