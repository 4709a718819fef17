import { inBlack } from "../figures/draw/ink";
import { escaped } from "../figures/draw/mark";
import { isDrawn } from "../figures/figure";
import type { FigureName } from "../figures/kinds";
import { figureOf } from "../figures/pages";
import { say } from "../words/say";
import type { Line } from "./line";
import type { LinesAsked } from "./lines-asked";
import { box, field, says, tick } from "./markup";

/** Where a number comes from, in small letters under it. */
export const basis = ({ basis: text }: Line): string => (text === "" ? "" : says("span", text, "basis"));

/** `CAUTION: glass dust` -> the caution in a grey bar; its first word is printed in any case. */
export const caution = (line: Line): string =>
  box(
    "div",
    { class: "caution", "data-key": line.key },
    says("b", line.quantity),
    ` ${escaped(line.words)}`,
    basis(line),
  );

/** A caution in words of its own, for a sheet that stands beside no row. */
export const warned = (about: string, text: string): string =>
  box("div", { class: "caution" }, says("b", say`Caution: ${about}`), ` ${escaped(text)}`);

/** A step of the work with a square to tick. */
export const step = (line: Line): string =>
  box(
    "div",
    { class: "step", "data-key": line.key },
    tick,
    says("b", line.quantity),
    box("span", {}, escaped(line.words), basis(line)),
  );

/** A point where the work stops until it was measured and signed. */
export const hold = (line: Line): string =>
  box(
    "div",
    { class: "hold", "data-key": line.key },
    says("b", line.quantity),
    ` ${escaped(line.words)}`,
    basis(line),
    box(
      "div",
      { class: "fields" },
      field(say`measured`, "wide"),
      field(say`holds: yes / no`),
      field(say`signed`),
      field(say`date, time`),
    ),
  );

/**
 * A table; every cell is markup that is already safe.
 *
 * @param kind columns that stand under one another from table to table; as wide as their words where it is left out.
 */
export const table = (
  head: readonly string[],
  rows: readonly string[],
  numbers: readonly number[] = [],
  kind?: "fixed" | "fixed buys" | "fixed reads" | "fixed signs" | "fixed changes",
): string =>
  box(
    "table",
    { class: kind },
    box(
      "thead",
      {},
      box(
        "tr",
        {},
        ...head.map((name, i) =>
          box("th", { scope: "col", class: numbers.includes(i) ? "number" : undefined }, escaped(name)),
        ),
      ),
    ),
    box("tbody", {}, ...rows),
  );

/** Figures side by side, in black; where one is not drawn, the sentence that says why. */
export const figures = ({ live, option }: LinesAsked, names: readonly FigureName[]): string =>
  box(
    "div",
    { class: "figures" },
    ...names.map((name) => {
      const figure = figureOf(live, name, option);
      return isDrawn(figure)
        ? box("figure", {}, says("figcaption", figure.title), inBlack(figure.svg))
        : box("figure", {}, says("figcaption", `${figure.title}: ${figure.sentence}`));
    }),
  );

/** Lines for names, dates and signatures. */
export const signatures = (who: readonly string[]): string =>
  box(
    "div",
    { class: "keep" },
    says("h2", say`Signed`),
    ...who.map((one) =>
      box(
        "div",
        { class: "fields" },
        field(say`${one}: name`, "wide tall"),
        field(say`date`, "tall"),
        field(say`signature`, "wide tall"),
      ),
    ),
  );
