import type { Step } from "../steps";
import type { Draft } from "./draft";
import { surfaceScript } from "./surface";
import { betweenScript, firstScript, lookupScript } from "./tables";

type Write<S> = (step: S, draft: Draft) => void;
type Of<K extends Step["kind"]> = Extract<Step, { kind: K }>;

const algebra: Write<Of<"algebra">> = (step, draft) => {
  const run = draft.run(step.formula);
  draft.line(`const ${draft.add(step.symbol)}=${run};`);
};

const choose: Write<Of<"choose">> = (step, draft) => {
  const by = draft.at(step.by);
  const cases = Object.entries(step.cases).map(([word, formula]) => [JSON.stringify(word), draft.run(formula)]);
  const [own, word] = [draft.add(step.symbol), draft.spare()];
  draft.line(`let ${own};const ${word}=String(${by});`);
  for (const [text, run] of cases) draft.line(`if(${word}===${text})${own}=${run};else`);
  draft.line(`{${draft.style.refuse}}`);
};

const convert: Write<Of<"convert">> = (step, draft) => {
  const [value, from, to] = [step.value, step.from, step.to].map((name) => draft.at(name));
  const own = draft.add(step.symbol);
  draft.line(`const ${own}=convertUnit(${value},String(${from}),String(${to}));`);
  draft.refuseUnless(`typeof ${own}==="number"`);
};

const mean: Write<Of<"mean">> = (step, draft) => {
  const [from, to] = [draft.run(step.from), draft.run(step.to)];
  const angle = draft.add(step.angle);
  const [term, weight] = [draft.run(step.term), draft.run(step.weight ?? "1")];
  const [start, part, total, weights, i, w] = Array.from({ length: 6 }, () => draft.spare());
  draft.line(`const ${start}=${from},${part}=(${to}-${start})/${step.points};let ${total}=0,${weights}=0;`);
  draft.line(`for(let ${i}=0;${i}<${step.points};${i}++){const ${angle}=${start}+(${i}+0.5)*${part},${w}=${weight};`);
  draft.line(`${total}+=${w}*${term};${weights}+=${w};}`);
  draft.line(`const ${draft.add(step.symbol)}=${total}/${weights};`);
};

const require: Write<Of<"require">> = (step, draft) => draft.refuseUnless(draft.test(step.holds));

const root: Write<Of<"root">> = (step, draft) => {
  const start = draft.run(step.start);
  const [own, i] = [draft.add(step.symbol), draft.spare()];
  draft.line(`let ${own}=${start};`);
  draft.line(`for(let ${i}=0;${i}<${step.times};${i}++)${own}=${draft.run(step.next)};`);
};

const sum: Write<Of<"sum">> = (step, draft) => {
  const count = draft.run(step.count);
  const index = draft.add(step.index);
  const term = draft.run(step.term);
  const [own, n] = [draft.add(step.symbol), draft.spare()];
  draft.line(`let ${own}=0;const ${n}=${count};`);
  draft.line(`for(let ${index}=0;${index}<${n};${index}++)${own}+=${term};`);
};

const total: Write<Of<"total">> = (step, draft) => {
  const over = draft.at(step.over);
  const each = draft.add(step.each);
  const term = draft.run(step.term);
  const own = draft.add(step.symbol);
  draft.line(`let ${own}=0;for(const ${each} of ${over})${own}+=${term};`);
};

const kinds: { readonly [K in Step["kind"]]: Write<Of<K>> } = {
  algebra,
  between: betweenScript,
  choose,
  convert,
  first: firstScript,
  lookup: lookupScript,
  mean,
  require,
  root,
  sum,
  surface: surfaceScript,
  total,
};

/** Writes one step as JavaScript; it does what `prepareStep` makes of it, in the same order. */
export const stepScript = (step: Step, draft: Draft): void =>
  (kinds[step.kind] as (step: Step, draft: Draft) => void)(step, draft);
