// Past 150 lines: one writer a kind of step, side by side so that they read alike.
import { said, say } from "../words/say";
import { allowed, words } from "./arguments";
import { callFunction, program } from "./call";
import { checkArgument } from "./check-argument";
import { type AnyDefinition, resultUnit } from "./definition";
import type {
  ExplainedArgument,
  ExplainedConstant,
  ExplainedStep,
  Explanation,
  Mathematics,
  NamedSource,
} from "./explanation";
import { Fault } from "./fault";
import { math, mathName, mathOperator } from "./math-element";
import type { Slots } from "./run";
import { sayAlgebra, sayChoose, sayConvert, sayRequire } from "./saying/algebra";
import type { Explain, Said } from "./saying/kinds";
import { sayBetween, sayFirst, sayLookup } from "./saying/reading";
import { sayMean, sayRoot, saySum, sayTotal } from "./saying/repeated";
import { Standing, type Written } from "./saying/standing";
import { saySurface } from "./saying/surface";
import { type Source, sourceLine } from "./source";
import type { Step } from "./steps";
import { symbolText } from "./symbol-name";
import type { Answer, Given, Value } from "./value";

const kinds: { readonly [K in Step["kind"]]: Explain<Extract<Step, { kind: K }>> } = {
  algebra: sayAlgebra,
  between: sayBetween,
  choose: sayChoose,
  convert: sayConvert,
  first: sayFirst,
  lookup: sayLookup,
  mean: sayMean,
  require: sayRequire,
  root: sayRoot,
  sum: saySum,
  surface: saySurface,
  total: sayTotal,
};

const saidBy = (step: Step, after: Standing | undefined): Said => (kinds[step.kind] as Explain<Step>)(step, after);

const named = (source: Source): NamedSource => ({ source, line: sourceLine(source) });

function equation(symbol: string, right: Written): Mathematics {
  if (symbol === "") return { text: right.text, mathml: math(right.markup) };
  return {
    text: `${symbolText(symbol)} = ${right.text}`,
    mathml: math(mathName(symbol), mathOperator("="), right.markup),
  };
}

function explainArgument(definition: AnyDefinition, name: string, given: Given): ExplainedArgument {
  const argument = definition.args[name] as AnyDefinition["args"][string];
  let value: Value | undefined;
  let refusal: string | undefined;
  try {
    value = checkArgument(name, argument, given);
  } catch (problem) {
    if (!(problem instanceof Fault)) throw problem;
    refusal = problem.sentence;
  }
  return {
    name,
    words: words(name),
    about: said(argument.about),
    unit: "unit" in argument ? argument.unit : "text",
    given,
    value,
    by: given === null || given === "" ? "default" : "given",
    allowed: allowed(argument),
    inside: refusal === undefined,
    refusal,
  };
}

const explainConstants = (definition: AnyDefinition): ExplainedConstant[] =>
  Object.entries(definition.constants ?? {}).map(([name, { value, unit, about, source }]) => ({
    name,
    words: symbolText(name),
    about: said(about),
    value,
    unit,
    source: named(source),
  }));

/** One step, run and explained; `slots` is undefined when the call has stopped before it. */
function explainStep(
  step: Step,
  places: ReadonlyMap<string, number>,
  slots: Slots | undefined,
  act: (slots: Slots) => void,
): ExplainedStep {
  let refusal: string | undefined;
  if (slots) {
    try {
      act(slots);
    } catch (problem) {
      if (!(problem instanceof Fault)) throw problem;
      refusal = problem.sentence;
    }
  }
  const symbol = "symbol" in step ? step.symbol : "";
  const after = slots && new Standing(places, slots);
  // A step that is refused may have nothing to put in: a key that is in no table, a range of one cell.
  const spoken = saidBy(step, refusal === undefined || step.kind === "require" ? after : undefined);
  return {
    kind: step.kind,
    symbol,
    symbols: equation(symbol, spoken.symbols),
    numbers: spoken.numbers && equation(symbol, spoken.numbers),
    value: refusal === undefined && symbol !== "" ? after?.value(symbol) : undefined,
    unit: "unit" in step ? step.unit : "1",
    why: "why" in step ? said(step.why) : say`the function answers only where this holds`,
    words: spoken.words,
    source: spoken.source && named(spoken.source),
    reached: slots !== undefined,
    refusal,
  };
}

function explainSteps(definition: AnyDefinition, values: readonly Value[] | undefined): ExplainedStep[] {
  const { acts, constants, names } = program(definition);
  const places = new Map(names.map((name, place) => [name, place]));
  let slots: Slots | undefined = values && [...values, ...constants];
  return definition.steps.map((step, i) => {
    const explained = explainStep(step, places, slots, acts[i] as (slots: Slots) => void);
    if (explained.refusal !== undefined) slots = undefined;
    return explained;
  });
}

/** The steps of a function in symbols, without a call. */
export const mathematicsOf = (definition: AnyDefinition): readonly ExplainedStep[] =>
  explainSteps(definition, undefined);

/**
 * Explains a call with arguments in the order of the definition: what went in, every step with its
 * mathematics and numbers, and the answer, or the step that refuses and its sentence.
 *
 * @param given blank (`null`) takes the default; fewer than the definition has are blank.
 */
export function explainCall(definition: AnyDefinition, given: readonly Given[]): Explanation {
  const names = Object.keys(definition.args);
  const args = names.map((name, i) => explainArgument(definition, name, given[i] ?? null));
  let result: Answer | undefined;
  let refusal: Explanation["refusal"];
  try {
    result = callFunction(definition, given);
  } catch (problem) {
    if (!(problem instanceof Fault)) throw problem;
    refusal = { code: problem.code, sentence: problem.sentence };
  }
  const whole = given.length <= names.length && args.every(({ inside }) => inside);
  return {
    name: definition.name,
    title: said(definition.title),
    ownOf: definition.ownOf,
    arguments: args,
    surplus:
      given.length > names.length
        ? say`${definition.name}: takes ${names.length} arguments, got ${given.length}`
        : undefined,
    constants: explainConstants(definition),
    steps: explainSteps(definition, whole ? args.map(({ value }) => value as Value) : undefined),
    result,
    unit: resultUnit(definition),
    refusal,
    valid: said(definition.valid),
    caution: definition.caution && said(definition.caution),
    sources: definition.sources.map(named),
  };
}
