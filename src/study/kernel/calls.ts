import { type AnyDefinition, resultUnit } from "../../formula/definition";
import { catalogue } from "../../functions";
import { say } from "../../words/say";
import { aggregateFunctions } from "./built-in/aggregates";
import { logicFunctions } from "./built-in/logic";
import { numberFunctions } from "./built-in/numbers";
import { textFunctions } from "./built-in/texts";
import { failure, finite, list, type Node } from "./node";
import { type Call, type Home, isBlock, itemsOf, type Lowering, NotTaken, type Part } from "./part";
import { kinds } from "./plain";

const definitions = new Map<string, AnyDefinition>(catalogue.map((one) => [one.name, one]));

const builtIn = new Map<string, Lowering>(
  [numberFunctions, logicFunctions, aggregateFunctions, textFunctions].flatMap(Object.entries),
);

/** A named function: its own definition judges blanks, limits and kinds, as it does for the engine. */
function named(definition: AnyDefinition, call: Call, home: Home): Part {
  const wanted = Object.values(definition.args);
  if (call.args.length > wanted.length) return failure;
  const args: Node[] = [];
  for (const [i, arg] of call.args.entries()) {
    const part = home.part(arg);
    if (wanted[i]?.kind === "range") args.push(isBlock(part) ? list(itemsOf(part)) : finite(part));
    // One value is wanted where several cells are given.
    else if (isBlock(part)) return failure;
    else args.push(finite(part));
  }
  const kind = resultUnit(definition) === "text" ? kinds.text | kinds.number : kinds.number;
  return { op: "named", definition, args, kinds: kind };
}

/** A call of a function, named or of the engine's own. @throws NotTaken for one that the kernel does not know. */
export function lowerCall(call: Call, home: Home): Part {
  const definition = definitions.get(call.name);
  if (definition) return named(definition, call, home);
  const own = home.own(call.name);
  // One with a mistake answers an error, whatever it is given.
  if (own) return "definition" in own ? named(own.definition, call, home) : failure;
  const lowering = builtIn.get(call.name);
  if (!lowering) throw new NotTaken(say`the function ${call.name} is not taken in`);
  return lowering(call, home);
}
