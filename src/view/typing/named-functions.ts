import { builtInNames } from "../../engine/engine";
import { type Argument, allowed, defaultOf, words } from "../../formula/arguments";
import type { AnyDefinition } from "../../formula/definition";
import { catalogue } from "../../functions";
import type { Notebook } from "../../notebook/model";
import { ownDefinitions } from "../../notebook/own/own-functions";
import { withDecimalSign } from "../../words/decimal-sign";
import { said, say } from "../../words/say";
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

const knownFunction = ({ name, title, args, ownOf }: AnyDefinition): KnownFunction => ({
  name,
  title: ownOf === undefined ? said(title) : `${title} (${say`the notebook's own`})`,
  args: Object.entries(args).map(([argument, definition]) => known(argument, definition)),
  repeats: false,
  isNamed: true,
});

const named: readonly KnownFunction[] = catalogue.map(knownFunction);

const described = new Set(builtInFunctions.map(({ name }) => name));

/** What the engine knows and nobody has described: the name alone. */
const others: readonly KnownFunction[] = builtInNames()
  .filter((name) => !described.has(name))
  .map((name) => ({ name, title: "", args: undefined, repeats: false, isNamed: false }));

const shipped: readonly KnownFunction[] = [...named, ...builtInFunctions, ...others];

/** Everything that can be typed before a bracket in a notebook. */
export function knownFunctions(notebook: Notebook): readonly KnownFunction[] {
  const own = ownDefinitions(notebook);
  return own.length > 0 ? [...own.map(knownFunction), ...shipped] : shipped;
}
