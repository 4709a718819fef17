import { say } from "../words/say";
import { type Allowance, figuresFor, placeFor, reach } from "./allowance";

/** A slip of the pen that any task may meet. */
export interface Slip {
  readonly title: string;
  readonly advice: string;
}

const roundedTooFar: Slip = {
  title: say`rounded too far`,
  advice: say`The way is right; give more figures.`,
};

const powerOfTen: Slip = {
  title: say`a power of ten off`,
  advice: say`The figures are right; look at the decimal point and at the units (mm and m, mΩ and Ω, g and kg).`,
};

const mostPower = 6;

function isCoarse(allowance: Allowance, value: number, right: number, figures: number): boolean {
  if (allowance.kind === "exact" || allowance.kind === "choice" || right === 0) return false;
  const asked =
    allowance.kind === "share"
      ? figuresFor(allowance.share)
      : Math.floor(Math.log10(Math.abs(right))) - Math.log10(placeFor(allowance.size)) + 1;
  return figures < asked && Number(right.toPrecision(figures)) === value;
}

function isShifted(allowance: Allowance, value: number, right: number): boolean {
  if (right === 0 || value === 0) return false;
  const power = Math.round(Math.log10(Math.abs(value / right)));
  if (power === 0 || Math.abs(power) > mostPower) return false;
  const scaled = value / 10 ** power;
  return Math.abs(scaled - right) <= Math.min(reach(allowance, right), 0.02 * Math.abs(right));
}

/** The slip by which a wrong number came about, where it can be seen. */
export function slipOf(allowance: Allowance, value: number, right: number, figures: number): Slip | undefined {
  if (isCoarse(allowance, value, right, figures)) return roundedTooFar;
  return isShifted(allowance, value, right) ? powerOfTen : undefined;
}
