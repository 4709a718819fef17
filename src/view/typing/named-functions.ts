import { builtInNames } from "../../engine/engine";
import { type Argument, allowed, defaultOf, words } from "../../formula/arguments";
import { catalogue } from "../../functions";
import { withDecimalSign } from "../../words/decimal-sign";
import { said } from "../../words/say";
import { unitText } from "../shown/unit-text";
import { builtInFunctions } from "./built-in-functions";
import type { KnownArgument, KnownFunction } from "./known-function";

function known(name: string, argument: Argument): KnownArgument {
  const otherwise = defaultOf(argument);
  const unit = "unit" in argument && argument.unit !== "any" && argument.unit !== "1" ? unitText(argument.unit) : "";
  return {
    name: words(name),
    about: said(argument.about),
    unit,
    allowed: allowed(argument),
    isOptional: otherwise !== undefined,
    otherwise: otherwise === undefined ? "" : withDecimalSign(String(otherwise)),
  };
}

const named: readonly KnownFunction[] = catalogue.map(({ name, title, args }) => ({
  name,
  title: said(title),
  args: Object.entries(args).map(([argument, definition]) => known(argument, definition)),
  repeats: false,
  isNamed: true,
}));

const described = new Set(builtInFunctions.map(({ name }) => name));

/** What the engine knows and nobody has described: the name alone. */
const others: readonly KnownFunction[] = builtInNames()
  .filter((name) => !described.has(name))
  .map((name) => ({ name, title: "", args: undefined, repeats: false, isNamed: false }));

/** Everything that can be typed before a bracket. */
export const knownFunctions: readonly KnownFunction[] = [...named, ...builtInFunctions, ...others];
