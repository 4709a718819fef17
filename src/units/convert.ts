import { kindOf, sameKind } from "./kinds";
import { unit } from "./library";
import { readUnit } from "./unit";

const unknown = (text: string): string =>
  `CONVERT: unit ${text} is not known; use a symbol such as mm, in, m2, l, kg, lbm, N, lbf, psi, kW, kn or C, ` +
  "capital and small letters as here";

/**
 * The same quantity in another unit. Units are the program's own texts (`mm2`, `degC`) and OpenFormula's symbols
 * (`lbm`, `C`), with SI prefixes where OpenFormula allows them.
 *
 * @returns the number, or a sentence that says why there is none.
 */
export function convertUnit(value: number, from: string, to: string): number | string {
  const source = readUnit(from);
  if (!source) return unknown(from);
  const target = readUnit(to);
  if (!target) return unknown(to);
  if (!sameKind(source, target)) {
    const [one, other] = [kindOf(source), kindOf(target)];
    const difference =
      one && other ? `${from} is ${one}, ${to} ${other}` : `${from} and ${to} measure different things`;
    return `CONVERT: ${difference}; give two units of the same kind`;
  }
  if (source === target || source.notation === target.notation) return value;
  return unit(value, source.notation).toNumber(target.notation);
}
