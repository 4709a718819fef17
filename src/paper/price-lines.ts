import { say } from "../words/say";
import type { LinesAsked } from "./lines-asked";

export interface PriceLine {
  readonly says: string;
  /** Hundredths of the unit of money, whole. */
  readonly hundredths: number;
}

export interface Price {
  readonly lines: readonly PriceLine[];
  readonly before: number;
  readonly tax: number;
  readonly total: number;
}

/**
 * The price before tax in lines, each with the mark-up in it. Every amount is whole hundredths, and the contingency
 * takes up the rounding, so that what is printed adds up.
 *
 * @returns undefined where a number is missing.
 */
export function priceLines(asked: LinesAsked): Price | undefined {
  const read = (key: string) => asked.number(`Estimate.${key}`);
  const [hours, rate, markup] = [read("hours_likely"), read("rate"), read("markup")];
  const [price, taxed] = [read("price_80"), read("price_taxed")];
  const costs = [
    [say`Labour`, hours === undefined || rate === undefined ? undefined : hours * rate],
    [say`Materials`, read("materials")],
    [say`Equipment`, read("equipment")],
    [say`Haul-out, days on the hard, waste`, read("yard")],
    [say`Electrician's test and certificate`, read("subcontract")],
  ] as const;
  if (markup === undefined || price === undefined || taxed === undefined) return undefined;
  const lines = costs.flatMap(([says, cost]) =>
    cost === undefined ? [] : [{ says, hundredths: Math.round(cost * (1 + markup) * 100) }],
  );
  if (lines.length < costs.length) return undefined;
  const before = Math.round(price * 100);
  const total = Math.round(taxed * 100);
  const rest = before - lines.reduce((sum, { hundredths }) => sum + hundredths, 0);
  return {
    lines: [...lines, { says: say`Contingency, for what is found on the way`, hundredths: rest }],
    before,
    tax: total - before,
    total,
  };
}
