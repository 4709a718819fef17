import { isFormula } from "../engine/content";
import { listed } from "../words/isolated";
import { say } from "../words/say";
import { cutRows, mapFormulas } from "./edit-lines";
import { checkCell, checkLength, checkSize, most } from "./limits";
import { columnsOf, firstOption, isOptionPage, type Notebook, optionsOf, type Page, pageByName } from "./model";
import { type Corner, mapReferences, type Reference } from "./references";
import { Refusal } from "./refusal";
import { moveOption } from "./row-entry";
import { cutFormula } from "./structure";

/** The column of an option. @throws Refusal that lists the options. */
export function optionColumn(notebook: Notebook, option: string): number {
  const options = optionsOf(notebook);
  const at = options.indexOf(option);
  if (at < 0) throw new Refusal(say`There is no option "${option}" (there are ${listed(options)}).`);
  return firstOption + at;
}

function checkName(notebook: Notebook, name: string): void {
  if (name.trim() === "" || name !== name.trim()) {
    throw new Refusal(say`An option needs a name that does not begin or end with a space.`);
  }
  checkLength(say`Option`, name);
  if (/[@"\n\r]/.test(name))
    throw new Refusal(say`Option name "${name}": @, quotation marks and line ends are not allowed.`);
  const taken = optionsOf(notebook).find((option) => option.toLowerCase() === name.toLowerCase());
  if (taken !== undefined) throw new Refusal(say`There is already an option "${taken}"; give another name.`);
}

/**
 * A formula of one option as it reads for another: what points into the option's own columns moves along, what
 * points to the lead columns, to free sheets or to fixed columns stays.
 */
export function formulaForOption(notebook: Notebook, home: Page, formula: string, by: number): string {
  const move = (at: Corner): Corner =>
    at.column === undefined || at.fixedColumn || at.column < firstOption ? at : { ...at, column: at.column + by };
  return mapReferences(formula, (old) => {
    const page = old.page === undefined ? home : pageByName(notebook, old.page);
    if (!page || !isOptionPage(page)) return old;
    // A block over several options means all of them and not the option's own column.
    if (old.to && old.to.column !== old.from.column) return old;
    return { ...old, from: move(old.from), to: old.to && move(old.to) };
  });
}

/** A block that spans all options goes on to do so when one is added at the end. */
function widened(notebook: Notebook, home: Page, formula: string, last: number): string {
  return mapReferences(formula, (old: Reference) => {
    const page = old.page === undefined ? home : pageByName(notebook, old.page);
    const spansAll =
      page && isOptionPage(page) && old.from.column === firstOption && old.to?.column === last && last > firstOption;
    return spansAll && old.to ? { ...old, to: { ...old.to, column: last + 1 } } : old;
  });
}

/**
 * Adds an option as the last column of every option page, its cells copied from another option.
 *
 * @param like the option to copy; the last one when left out.
 * @throws Refusal for a name that is empty or taken, or an unknown option.
 */
export function addOption(notebook: Notebook, name: string, like = optionsOf(notebook).at(-1)): Notebook {
  if (like === undefined) throw new Refusal(say`This notebook has no option page to add an option to.`);
  checkName(notebook, name);
  const options = optionsOf(notebook);
  if (options.length >= most.options) {
    throw new Refusal(say`There are ${options.length} options (allowed ${most.options}); remove one first.`);
  }
  for (const page of notebook.pages.filter(isOptionPage)) {
    checkSize(page.name, page.rows.length, columnsOf(page) + 1);
  }
  const from = optionColumn(notebook, like);
  const to = firstOption + options.length;
  const pages = notebook.pages.map((page) => {
    if (!isOptionPage(page)) return page;
    const rows = page.rows.map((row, i) => {
      const text = row[from] ?? "";
      const copy = isFormula(text) ? formulaForOption(notebook, page, text, to - from) : text;
      checkCell(page.name, i, to, copy);
      return [...row, i === 0 ? name : copy];
    });
    return { ...page, rows };
  });
  return mapFormulas({ ...notebook, pages }, (formula, home) => widened(notebook, home, formula, to - 1));
}

/** Removes an option from every option page. @throws Refusal for an unknown or the only option. */
export function removeOption(notebook: Notebook, name: string): Notebook {
  const at = optionColumn(notebook, name);
  if (optionsOf(notebook).length === 1) throw new Refusal(say`The only option cannot be removed; rename it instead.`);
  const cut = { axis: "column", at, count: -1 } as const;
  const optionPages = notebook.pages.filter(isOptionPage);
  const followed = mapFormulas(notebook, (formula, home) =>
    optionPages.reduce((text, page) => cutFormula(text, home.name, page.name, cut), formula),
  );
  return {
    ...followed,
    pages: followed.pages.map((page) =>
      isOptionPage(page) ? { ...page, rows: cutRows(page.rows, cut, columnsOf(page)) } : page,
    ),
  };
}

/** Gives an option another name on every option page. @throws Refusal for a name that is empty or taken. */
export function renameOption(notebook: Notebook, from: string, to: string): Notebook {
  const at = optionColumn(notebook, from);
  if (from === to) return notebook;
  if (from.toLowerCase() !== to.toLowerCase()) checkName(notebook, to);
  const pages = notebook.pages.map((page) => {
    const [header, ...rest] = page.rows;
    return isOptionPage(page) && header ? { ...page, rows: [header.with(at, to), ...rest] } : page;
  });
  return { ...moveOption(notebook, from, to), pages };
}
