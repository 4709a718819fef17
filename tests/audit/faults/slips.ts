import { pick } from "../../formula/random-expression";
import { argumentsSwapped, range, replacedByNumber, wrongRow, wrongSheet } from "./reference-slips";
import type { MakeSlip } from "./slip";

const opposite: Readonly<Record<string, string>> = { "+": "-", "-": "+", "*": "/", "/": "*" };

const operator =
  (which: string): MakeSlip =>
  (random, _, { text }) => {
    const found = [...text.matchAll(/(?<=[\w)])[-+*/](?=[\w('$])/g)].filter(({ 0: sign }) => which.includes(sign));
    if (found.length === 0 || /["']/.test(text)) return undefined;
    const { 0: from, index } = pick(random, found);
    const right = text.slice(index + 1);
    return {
      text: `${text.slice(0, index)}${opposite[from]}${right}`,
      trace: { what: "operator", from, right },
    };
  };

const thousand: MakeSlip = (random, _, { text }) => {
  if (text.includes('"')) return undefined;
  const found = [...text.matchAll(/[*/]1000(?!\d)/g)];
  if (found.length > 0) {
    const { 0: part, index } = pick(random, found);
    const dropped = text.slice(0, index) + text.slice(index + part.length);
    return { text: dropped, trace: { what: "thousand", dropped: true } };
  }
  return { text: `=(${text.slice(1)})${pick(random, ["*", "/"])}1000`, trace: { what: "thousand", dropped: false } };
};

const wholeSign: MakeSlip = (_, __, { text }) =>
  text.includes('"') ? undefined : { text: `=-(${text.slice(1)})`, trace: { what: "sign" } };

const signs = operator("+-");

const errorHidden: MakeSlip = (_, __, { text }) =>
  text.includes('"') ? undefined : { text: `=IFERROR(${text.slice(1)},0)`, trace: { what: "hidden error" } };

/** Slips of the pen in a formula, by kind. */
export const slips: Readonly<Record<string, MakeSlip>> = {
  "reference replaced by its number": replacedByNumber,
  "range shifted": range((top, bottom) => [top + 1, bottom + 1]),
  "range shortened": range((top, bottom) => [top, bottom - 1]),
  "thousand dropped or added": thousand,
  "arguments swapped": argumentsSwapped,
  "wrong row": wrongRow,
  "wrong sheet's row": wrongSheet,
  sign: (random, live, place) => (random() < 0.5 ? signs(random, live, place) : wholeSign(random, live, place)),
  "times for divided": operator("*/"),
  "error hidden": errorHidden,
};
