import type { Act, Scope } from "../scope";
import { type Algebra, algebra } from "./algebra";
import { type Between, between } from "./between";
import { type Choose, choose } from "./choose";
import { type Convert, convert } from "./convert";
import { type First, first } from "./first";
import { type Lookup, lookup } from "./lookup";
import { type Mean, mean } from "./mean";
import { type Require, require } from "./require";
import { type Root, root } from "./root";
import { type Sum, sum } from "./sum";
import { type Surface, surface } from "./surface";
import { type Total, total } from "./total";

export type Step =
  | Algebra
  | Between
  | Choose
  | Convert
  | First
  | Lookup
  | Mean
  | Require
  | Root
  | Sum
  | Surface
  | Total;

const kinds: { readonly [K in Step["kind"]]: (step: Extract<Step, { kind: K }>, scope: Scope) => Act } = {
  algebra,
  between,
  choose,
  convert,
  first,
  lookup,
  mean,
  require,
  root,
  sum,
  surface,
  total,
};

/** Makes a step ready to run: reads its formulas and gives its symbol a slot. */
export const prepareStep = (step: Step, scope: Scope): Act =>
  (kinds[step.kind] as (step: Step, scope: Scope) => Act)(step, scope);
