import { words } from "../formula/arguments";
import { Fault } from "../formula/fault";
import { say } from "../words/say";

/** Least and most of an input; what is left out has no limit. */
export type Limits<Input> = { readonly [K in keyof Input]?: readonly [least: number, most: number] };

/** A least value that only keeps nothing and less out, and a most value that nobody comes to, are not named. */
function rangeWords([least, most]: readonly [number, number]): string {
  const isOpen = most >= 1e9;
  if (least > 0 && least <= 1e-6) return isOpen ? "above 0" : say`above 0 up to ${most}`;
  return isOpen ? say`from ${least} up` : say`from ${least} to ${most}`;
}

/**
 * Holds the inputs of a figure to what can be drawn. A limit here keeps a drawing legible; the limits of the
 * calculation are those of the named functions.
 *
 * @throws Fault that names the first input which is not a number or lies outside.
 */
export function need<Input extends object>(input: Input, limits: Limits<Input> = {}): void {
  for (const [name, value] of Object.entries(input)) {
    if (typeof value !== "number" && value !== undefined) continue;
    if (value === undefined || !Number.isFinite(value)) {
      throw new Fault("kind", say`${words(name)}: no number`);
    }
    const range = limits[name as keyof Input];
    if (range && !(value >= range[0] && value <= range[1])) {
      throw new Fault("range", say`${words(name)}: ${value} (can be drawn ${rangeWords(range)})`);
    }
  }
}
