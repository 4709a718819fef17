import { say } from "../words/say";
import { kindOf, sameKind } from "./kinds";
import { unit } from "./library";
import { readUnit, type Unit } from "./unit";

const unknown = (text: string): string =>
  say`CONVERT: unit ${text} is not known; use a symbol such as mm, in, m2, l, kg, lbm, N, lbf, psi, kW, kn or C, capital and small letters as here`;

type Converter = (value: number) => number;

/** A part of a unit as the library keeps it; its own types call the unit a string. */
interface UnitPart {
  readonly unit: { readonly value: number };
  readonly prefix: { readonly value: number };
  readonly power: number;
}

/** What the library multiplies by for each part of a unit, in its own order. */
const factorsOf = ({ notation }: Unit): readonly number[] =>
  (unit(1, notation).units as unknown as readonly UnitPart[]).map(
    ({ unit: base, prefix, power }) => (base.value * prefix.value) ** power,
  );

function converter(source: Unit, target: Unit): Converter {
  if (source === target || source.notation === target.notation) return (value) => value;
  // Zero points are the library's business; without them its products and quotients are all there is.
  if (source.offset !== 0 || target.offset !== 0)
    return (value) => unit(value, source.notation).toNumber(target.notation);
  const [up, down] = [factorsOf(source), factorsOf(target)];
  return (value) => {
    let result = value;
    for (const factor of up) result *= factor;
    for (const factor of down) result /= factor;
    return result;
  };
}

function findConverter(from: string, to: string): Converter | string {
  const source = readUnit(from);
  if (!source) return unknown(from);
  const target = readUnit(to);
  if (!target) return unknown(to);
  if (sameKind(source, target)) return converter(source, target);
  const [one, other] = [kindOf(source), kindOf(target)];
  const difference =
    one && other ? say`${from} is ${one}, ${to} ${other}` : say`${from} and ${to} measure different things`;
  return say`CONVERT: ${difference}; give two units of the same kind`;
}

/** By unit converted from and to; free words of a sweep must not pile up. */
const known = new Map<string, Map<string, Converter | string>>();
const mostKnown = 1000;

/**
 * The same quantity in another unit. Units are the program's own texts (`mm2`, `degC`) and OpenFormula's symbols
 * (`lbm`, `C`), with SI prefixes where OpenFormula allows them.
 *
 * @returns the number, or a sentence that says why there is none.
 */
export function convertUnit(value: number, from: string, to: string): number | string {
  let targets = known.get(from);
  if (!targets) {
    if (known.size >= mostKnown) known.clear();
    targets = new Map();
    known.set(from, targets);
  }
  let found = targets.get(to);
  if (found === undefined) {
    found = findConverter(from, to);
    if (targets.size >= mostKnown) targets.clear();
    targets.set(to, found);
  }
  return typeof found === "string" ? found : found(value);
}
