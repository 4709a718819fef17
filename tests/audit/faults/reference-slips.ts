import type { LiveNotebook } from "../../../src/notebook/live";
import { isOptionPage, type Page } from "../../../src/notebook/model";
import { type Reference, referencesOf } from "../../../src/notebook/references";
import { rowKind } from "../../../src/notebook/rows";
import { pick } from "../../formula/random-expression";
import { type Place, pageOfReference, type Random } from "./fault";
import { referenceText, replaceReference } from "./reference-text";
import type { MakeSlip } from "./slip";

const isSingle = ({ to, from }: Reference): boolean => !to && from.row !== undefined && from.column !== undefined;
/** Of three cells or more, so that one cell less is still a range. */
const isBlock = ({ from, to }: Reference): boolean =>
  to !== undefined && to.column === from.column && (to.row ?? 0) > (from.row ?? 0) + 1;

function chosen(random: Random, text: string, can: (one: Reference) => boolean): readonly [number, Reference] | [] {
  const fitting = referencesOf(text).flatMap((one, i) => (can(one) ? [[i, one] as const] : []));
  return fitting.length > 0 ? pick(random, fitting) : [];
}

const numberAt = (live: LiveNotebook, page: Page, row: number, column: number): number | undefined => {
  const value = live.value({ page: page.id, row, column });
  return value.kind === "number" ? value.value : undefined;
};

/** A row of numbers, as one takes for another. */
const holdsNumber = (live: LiveNotebook, page: Page, row: number, column: number): boolean =>
  ["input", "result", "check"].includes(rowKind(page, row)) && numberAt(live, page, row, column) !== undefined;

export const replacedByNumber: MakeSlip = (random, live, { home, text }) => {
  const [which, one] = chosen(random, text, isSingle);
  const page = one && pageOfReference(live.notebook, home, one);
  const value = page && numberAt(live, page, one.from.row ?? 0, one.from.column ?? 0);
  if (which === undefined || value === undefined) return undefined;
  const typed = String(Number(value.toPrecision(6)));
  const slip = replaceReference(text, which, typed);
  return { text: slip.text, trace: { what: "number", value: Number(typed), around: slip.around } };
};

export const range =
  (change: (from: number, to: number) => readonly [number, number]): MakeSlip =>
  (random, _, { text }) => {
    const [which, before] = chosen(random, text, isBlock);
    if (which === undefined || !before?.to) return undefined;
    const [top, bottom] = change(before.from.row ?? 0, before.to.row ?? 0);
    const after = { ...before, from: { ...before.from, row: top }, to: { ...before.to, row: bottom } };
    const slip = replaceReference(text, which, referenceText(after));
    return { text: slip.text, trace: { what: "range", before, after, around: slip.around } };
  };

const otherReference =
  (other: (random: Random, live: LiveNotebook, place: Place, one: Reference) => Reference | undefined): MakeSlip =>
  (random, live, place) => {
    const [which, before] = chosen(random, place.text, isSingle);
    const after = before && other(random, live, place, before);
    if (which === undefined || !before || !after) return undefined;
    const slip = replaceReference(place.text, which, referenceText(after));
    return { text: slip.text, trace: { what: "reference", before, after, around: slip.around } };
  };

export const wrongRow = otherReference((random, live, { home, row: own }, one) => {
  const page = pageOfReference(live.notebook, home, one);
  const { row = 0, column = 0 } = one.from;
  if (!page || !isOptionPage(page)) return undefined;
  const near = [-3, -2, -1, 1, 2, 3].map((by) => row + by);
  const fitting = near.filter(
    (other) => other > 0 && !(page === home && other === own) && holdsNumber(live, page, other, column),
  );
  return fitting.length > 0 ? { ...one, from: { ...one.from, row: pick(random, fitting) } } : undefined;
});

export const wrongSheet = otherReference((random, live, { home, row: own }, one) => {
  const right = pageOfReference(live.notebook, home, one);
  const { row = 0, column = 0 } = one.from;
  const others = live.notebook.pages.filter(
    (page) =>
      page !== right && isOptionPage(page) && !(page === home && row === own) && holdsNumber(live, page, row, column),
  );
  if (!right || !isOptionPage(right) || others.length === 0) return undefined;
  const page = pick(random, others);
  return { ...one, page: page === home ? undefined : page.name };
});

const singleText = "(?:(?:'[^']+'|[A-Za-z_]\\w*)!)?\\$?[A-Z]{1,2}\\$?\\d+";
const neighbours = new RegExp(`(?<=[A-Z]\\.[A-Z0-9.]*\\((?:[^()]*,)?)(${singleText}),(${singleText})(?=[,)])`, "g");

/** Two neighbouring arguments of a named function, changed about. */
export const argumentsSwapped: MakeSlip = (random, _, { text }) => {
  const pairs = [...text.matchAll(neighbours)];
  if (pairs.length === 0) return undefined;
  const { 0: both, 1: first = "", 2: second = "", index } = pick(random, pairs);
  const [a, b] = referencesOf(`=${first}+${second}`);
  if (!a || !b || first === second) return undefined;
  return {
    text: `${text.slice(0, index)}${second},${first}${text.slice(index + both.length)}`,
    trace: { what: "swap", pair: [a, b] },
  };
};
