import { type Scale, scaleName } from "../../units/scale";
import { say } from "../../words/say";
import type { Judge } from "./judge";
import { type Measure, type Quantity, quantity, silent } from "./measure";

/** A temperature counted from a zero of its own, such as degC. */
export const isAbsolute = (of: Quantity): boolean => of.scales.every((scale) => scale.zero !== 0);

/** The same unit without its zero: what differences of such temperatures are counted in. */
const difference = (of: Quantity): Quantity => quantity(...of.scales.map((scale) => ({ ...scale, zero: 0 })));

/** Says that a temperature stands where only a difference makes sense. */
export function absolute(judge: Judge, op: string, name: string, of: Quantity): Measure {
  const unit = scaleName(of.scales[0] as Scale);
  judge.say("error", say`${op}: ${name} is a temperature in ${unit}; subtract a reference temperature first`);
  return silent;
}

/** 20 degC − 15 degC is 5 K, 20 degC + 5 K is 25 degC, and two degC have no sum. */
export function temperatures(
  judge: Judge,
  op: "+" | "-",
  a: Quantity,
  b: Quantity,
  names: readonly [string, string],
): Measure {
  if (isAbsolute(a) && isAbsolute(b)) {
    if (op === "+") {
      const unit = scaleName(a.scales[0] as Scale);
      judge.say("error", say`+: ${names[0]} and ${names[1]} are both temperatures in ${unit}; they have no sum`);
      return silent;
    }
    const common = judge.alike(op, a, b, names);
    return common.kind === "quantity" ? difference(common) : silent;
  }
  if (op === "-" && isAbsolute(b)) return absolute(judge, "-", names[1], b);
  const hot = isAbsolute(a) ? a : b;
  const fits = judge.alike(op, hot === a ? difference(a) : a, hot === b ? difference(b) : b, names);
  return fits.kind === "quantity" ? hot : silent;
}
