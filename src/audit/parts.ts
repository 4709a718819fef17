import { type Parsed, partsOf } from "../engine/parsed";

/** A part of a formula with the call or operator that it stands in. */
export interface Placed {
  readonly part: Parsed;
  readonly inside: Parsed | undefined;
  /** Which argument or side of `inside` it is. */
  readonly place: number;
}

/** Every part of a formula, outer ones first; brackets are looked through. */
export function everyPart(parsed: Parsed, inside?: Parsed, place = 0): Placed[] {
  if (parsed.kind === "brackets") return everyPart(parsed.of, inside, place);
  return [{ part: parsed, inside, place }, ...partsOf(parsed).flatMap((part, i) => everyPart(part, parsed, i))];
}

/** How many calls stand inside one another at most. */
export function callDepth(parsed: Parsed): number {
  const inner = Math.max(0, ...partsOf(parsed).map(callDepth));
  return parsed.kind === "call" ? inner + 1 : inner;
}
