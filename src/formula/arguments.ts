import type { UnitText } from "../units/names";
import { betweenNumbers, withDecimalSign } from "../words/decimal-sign";
import { said, say } from "../words/say";

/** A number with a unit and limits. `any` takes every unit; arguments marked so in one function share it. */
export interface NumberArgument {
  readonly kind?: "number";
  readonly about: string;
  readonly unit: UnitText | "any";
  readonly min?: number;
  readonly max?: number;
  /** The smallest value is not allowed itself. */
  readonly aboveMin?: true;
  readonly whole?: true;
  readonly oneOf?: readonly number[];
  readonly otherwise?: number;
}

/** One of a few words, or any text where no choices are named. */
export interface TextArgument {
  readonly kind: "text";
  readonly about: string;
  readonly choices?: readonly string[];
  readonly otherwise?: string;
}

export interface FlagArgument {
  readonly kind: "flag";
  readonly about: string;
  readonly otherwise?: boolean;
}

/** A size that is named, not measured (`4/0`); a number is taken as its digits. */
export interface KeyArgument {
  readonly kind: "key";
  readonly about: string;
  readonly keys: readonly string[];
  readonly otherwise?: string;
}

/** The numbers of a range of cells, at least one. */
export interface RangeArgument {
  readonly kind: "range";
  readonly about: string;
  readonly unit: UnitText | "any";
  readonly min?: number;
  readonly max?: number;
}

export type Argument = NumberArgument | TextArgument | FlagArgument | KeyArgument | RangeArgument;

/** `halfBreadth` is shown and spoken of as `half breadth`, in the language that is spoken. */
export const words = (name: string): string => said(name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`));

/** `halfBreadth` -> value used when the cell is blank or the argument is left out. */
export const defaultOf = (argument: Argument): number | string | boolean | undefined =>
  argument.kind === "range" ? undefined : argument.otherwise;

/** A unit as a sentence shows it; nothing for a plain number. */
export const unitWord = (unit: UnitText | "any"): string =>
  unit === "1" || unit === "any" ? "" : ` ${unit === "degC" ? "°C" : unit}`;

/** What an argument allows, in words: `0 to 5000 A`. */
export function allowed(argument: Argument): string {
  switch (argument.kind) {
    case "text":
      return argument.choices ? argument.choices.map((choice) => `"${choice}"`).join(say` or `) : say`any text`;
    case "flag":
      return say`TRUE or FALSE`;
    case "key":
      return say`${argument.keys[0] ?? ""} to ${argument.keys.at(-1) ?? ""}`;
    default: {
      const unit = unitWord(argument.unit);
      if ("oneOf" in argument && argument.oneOf)
        return `${argument.oneOf.map((one) => withDecimalSign(String(one))).join(betweenNumbers())}${unit}`;
      const { min, max } = argument;
      const isAbove = "aboveMin" in argument;
      if (min !== undefined && max !== undefined) {
        return isAbove ? say`above ${min} to ${max}${unit}` : say`${min} to ${max}${unit}`;
      }
      if (min !== undefined) return isAbove ? say`above ${min}${unit}` : say`from ${min}${unit}`;
      if (max !== undefined) return say`up to ${max}${unit}`;
      return say`any number`;
    }
  }
}
