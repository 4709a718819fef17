import { isFormula } from "../../engine/content";
import { type Parsed, type ParsedCell, partsOf } from "../../engine/parsed";
import { nameOnPage } from "../../notebook/cell-name";
import { countsNow } from "../../notebook/counts-now";
import { firstOption, isOptionPage, lead, type Page } from "../../notebook/model";
import { say } from "../../words/say";
import { type Finding, found } from "../finding";
import { everyPart } from "../parts";
import type { Rule } from "../rule";
import { placesOf, readsAny, type Subject } from "../subject";

const name = "text-as-number";

const arithmetic = new Set(["+", "-", "*", "/", "^"]);

const isArithmetic = (one: Parsed | undefined): boolean =>
  one !== undefined && ((one.kind === "operator" && arithmetic.has(one.op)) || one.kind === "sign");

/** Whether a reference stands in arithmetic at all, whatever the cell holds. */
const calculates = (parsed: Parsed): boolean =>
  everyPart(parsed).some(({ part, inside }) => part.kind === "reference" && isArithmetic(inside));

/** Sides of arithmetic that are cells with text, in the branches that are taken now. */
function textSides(subject: Subject, parsed: Parsed): ParsedCell[] {
  const { live, notebook } = subject;
  const isText = ({ sheet, row, column }: ParsedCell): boolean =>
    live.value({ page: notebook.pages[sheet]?.id ?? "", row, column }).kind === "text";
  const plain = (one: Parsed): Parsed => (one.kind === "brackets" ? plain(one.of) : one);
  const walk = (one: Parsed, wanted: boolean): ParsedCell[] => {
    if (one.kind === "brackets") return walk(one.of, wanted);
    if (one.kind === "reference") return wanted && isText(one.at) ? [one.at] : [];
    const counts = one.kind === "call" ? countsNow(live, one) : () => true;
    return partsOf(one).flatMap((part, i) => (counts(i) ? walk(plain(part), isArithmetic(one)) : []));
  };
  return walk(parsed, false);
}

function inFormulas(subject: Subject): Finding[] {
  return subject.forms.flatMap((form) => {
    if (!form.parsed || !calculates(form.parsed)) return [];
    return placesOf(form).flatMap((at) => {
      const reads = readsAny(form, at.column, (page, row, column) => subject.kind(page, row, column) === "text");
      const parsed = reads ? subject.live.parsed(at) : undefined;
      const cells = parsed ? textSides(subject, parsed) : [];
      if (cells.length === 0) return [];
      const names = cells.map(({ sheet, row, column }) => {
        const page = subject.notebook.pages[sheet] as Page;
        return `${nameOnPage(page, row, column).cell} ("${page.rows[row]?.[column] ?? ""}")`;
      });
      const message = say`${names.join(", ")} ${names.length === 1 ? say`is text` : say`are texts`} where a number is due; type a number with a decimal point`;
      return [found(name, "error", nameOnPage(form.page, at.row, at.column), message)];
    });
  });
}

/** `12,5`, `1 200` or `'35` in a row with a unit: meant as a number, kept as text. */
function inRows({ notebook }: Subject): Finding[] {
  return notebook.pages.filter(isOptionPage).flatMap((page) =>
    page.rows.flatMap((cells, row) => {
      if (row === 0 || !cells[lead.unit]) return [];
      return cells.flatMap((text, column) => {
        if (column < firstOption || isFormula(text) || !/^['\s]*[+-]?\d[\d\s.,']*\s*%?$/.test(text)) return [];
        if (/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(text)) return [];
        const message = say`"${text}" is text in a row of numbers; type it with a decimal point and without blanks or signs`;
        return [found(name, "error", nameOnPage(page, row, column), message)];
      });
    }),
  );
}

/** Text where a number is due. */
export const textAsNumber: Rule = {
  name,
  about: say`text that stands where a number is due`,
  readsParts: true,
  find: (subject) => [...inRows(subject), ...inFormulas(subject)],
};
