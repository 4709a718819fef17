import type { Between } from "../steps/between";
import type { First } from "../steps/first";
import type { Lookup } from "../steps/lookup";
import { choicesOf, columnNames, type Pick } from "../steps/pick";
import { columnAt, type Table } from "../table";
import type { Draft } from "./draft";

type Cell = string | number | null | undefined;

const column = (rows: readonly (readonly Cell[])[], at: number): string =>
  JSON.stringify(rows.map((row) => row[at] ?? null));

/**
 * Variable of what a pick gives: the one thing, or the one that an argument's value names.
 *
 * Like the closures it knows no refusal for a word without a choice; the argument's own limits rule that out.
 */
function picked<T>(pick: Pick<T>, draft: Draft, write: (one: T) => string): string {
  const choices = choicesOf(pick).map(write);
  const [only = ""] = choices;
  if (typeof pick !== "object" || pick === null || !("by" in pick && "of" in pick)) return only;
  const [word, own] = [draft.spare(), draft.spare()];
  draft.line(`let ${own};const ${word}=String(${draft.at(pick.by)});`);
  Object.keys(pick.of).forEach((text, i) => {
    draft.line(`if(${word}===${JSON.stringify(text)})${own}=${choices[i]};else`);
  });
  draft.line(`{${draft.style.refuse}}`);
  return own;
}

function pointVariables(step: Between, draft: Draft): readonly [string, string] {
  const { points } = step;
  if ("xs" in points) return [draft.at(points.xs), draft.at(points.ys)];
  const { rows } = points.table;
  return [draft.table(column(rows, 0)), draft.table(column(rows, columnAt(points.table, points.column)))];
}

export function betweenScript(step: Between, draft: Draft): void {
  const [xs, ys] = pointVariables(step, draft);
  const at = draft.run(step.at);
  const own = draft.add(step.symbol);
  const [x, last, i] = [draft.spare(), draft.spare(), draft.spare()];
  if ("xs" in step.points) {
    draft.refuseUnless(`${xs}.length===${ys}.length&&${xs}.length>=2`);
    draft.line(`for(let ${i}=1;${i}<${xs}.length;${i}++)if(${xs}[${i}]<=${xs}[${i}-1]){${draft.style.refuse}}`);
  }
  draft.line(`let ${own};const ${x}=${at},${last}=${xs}.length-1;`);
  if (step.beyond === "hold") draft.line(`if(${x}>${xs}[${last}])${own}=${ys}[${last}];else`);
  draft.line(`{if(!(${x}>=${xs}[0]&&${x}<=${xs}[${last}])){${draft.style.refuse}}`);
  draft.line(`let ${i}=0;while(${i}<${last}-1&&${x}>=${xs}[${i}+1])${i}++;`);
  const share = `((${x}-${xs}[${i}])/(${xs}[${i}+1]-${xs}[${i}]))`;
  draft.line(`${own}=${ys}[${i}]+${share}*(${ys}[${i}+1]-${ys}[${i}]);}`);
}

export function firstScript(step: First, draft: Draft): void {
  const names = columnNames(choicesOf(step.table)[0] as Table);
  const variables = names.map((name) => draft.add(name));
  const test = draft.test(step.where);
  const own = draft.add(step.symbol);
  const table = picked(step.table, draft, (one) => {
    const rows = step.from === "end" ? [...one.rows].reverse() : one.rows;
    return draft.table(`[${[columnAt(one, step.take), ...names.keys()].map((at) => column(rows, at)).join(",")}]`);
  });
  const i = draft.spare();
  draft.line(`let ${own};{let ${i}=0;for(;${i}<${table}[0].length;${i}++){`);
  draft.line(`const ${variables.map((variable, at) => `${variable}=${table}[${at + 1}][${i}]`).join(",")};`);
  draft.line(`if(${test})break;}`);
  draft.line(`if(${i}===${table}[0].length){${draft.style.refuse}}${own}=${table}[0][${i}];}`);
}

export function lookupScript(step: Lookup, draft: Draft): void {
  const key = draft.at(step.key);
  // As in a map, the last of two rows with one key counts.
  const rows = [...new Map(step.table.rows.map((row) => [row[0], row])).values()];
  const keys = draft.table(column(rows, 0));
  const values = picked(step.column, draft, (name) => draft.table(column(rows, columnAt(step.table, name))));
  const own = draft.add(step.symbol);
  const i = draft.spare();
  draft.line(`const ${i}=${keys}.indexOf(${key});`);
  draft.refuseUnless(`${i}>=0`);
  draft.line(`const ${own}=${values}[${i}];`);
  draft.refuseUnless(`${own}!==null`);
}
