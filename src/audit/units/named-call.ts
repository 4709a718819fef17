import { words } from "../../formula/arguments";
import { type AnyDefinition, resultUnit } from "../../formula/definition";
import { isUnitText } from "../../units/names";
import { scaleOf } from "../../units/scale";
import { type Measure, quantity, silent } from "./measure";
import type { Call, Visit } from "./visit";

/** CONVERT takes its units from its own texts. */
function convert(visit: Visit, { args }: Call): Measure {
  const [value, from, to] = args;
  const given = value ? visit.measure(value) : silent;
  const [source, target] = [from, to].map((part) => {
    const text = part && visit.around.text(part);
    return text === undefined ? undefined : scaleOf(text);
  });
  if (value && source) visit.judge.wanted("CONVERT, from", visit.words(value), given, source);
  return target ? quantity(target) : silent;
}

/** A call of a named function: every argument against its declared unit; the result has the function's own. */
export function namedCall(visit: Visit, call: Call, definition: AnyDefinition): Measure {
  if (definition.name === "CONVERT") return convert(visit, call);
  let open: { readonly measure: Measure; readonly name: string } | undefined;
  const args = Object.entries(definition.args);
  call.args.forEach((part, i) => {
    const measure = visit.measure(part);
    const [name, argument] = args[i] ?? [];
    if (!name || !argument || !("unit" in argument)) return;
    if (argument.unit === "any") {
      const title = `${definition.name}, ${words(name)}`;
      if (open) visit.judge.alike(title, open.measure, measure, [open.name, visit.words(part)]);
      else if (measure.kind === "quantity") open = { measure, name: visit.words(part) };
      return;
    }
    const unit = scaleOf(argument.unit);
    if (unit) visit.judge.wanted(`${definition.name}, ${words(name)}`, visit.words(part), measure, unit);
  });
  const unit = resultUnit(definition);
  if (unit === "any") return open?.measure ?? silent;
  const scale = isUnitText(unit) ? scaleOf(unit) : undefined;
  return scale ? quantity(scale) : silent;
}
