import { words } from "../formula/arguments";
import { Fault } from "../formula/fault";

/** Least and most of an input; what is left out has no limit. */
export type Limits<Input> = { readonly [K in keyof Input]?: readonly [least: number, most: number] };

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
      throw new Fault("kind", `${words(name)}: no number`);
    }
    const range = limits[name as keyof Input];
    if (range && !(value >= range[0] && value <= range[1])) {
      throw new Fault("range", `${words(name)}: ${value} (can be drawn from ${range[0]} to ${range[1]})`);
    }
  }
}
