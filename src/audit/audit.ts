import type { Accepted } from "../notebook/about";
import type { LiveNotebook } from "../notebook/live";
import type { Notebook } from "../notebook/model";
import type { FindFunction } from "../notebook/named-function";
import { say } from "../words/say";
import { acceptanceOf } from "./accept";
import type { Finding } from "./finding";
import type { Rule } from "./rule";
import { adapted } from "./rules/adapted";
import { blankReference } from "./rules/blank-reference";
import { differs, typedOver } from "./rules/differs";
import { errorValue, outsidePublished } from "./rules/error-value";
import { implausible } from "./rules/implausible";
import { linkChain } from "./rules/link-chain";
import { longFormula } from "./rules/long-formula";
import { ownFunction } from "./rules/own-function";
import { scaleSlip } from "./rules/scale-slip";
import { shortRange } from "./rules/short-range";
import { staleReview } from "./rules/stale-review";
import { swallowedError } from "./rules/swallowed-error";
import { textAsNumber } from "./rules/text-as-number";
import { typedNumber } from "./rules/typed-number";
import { units, unknownUnit } from "./rules/units";
import { unusedInput } from "./rules/unused-input";
import { volatile } from "./rules/volatile";
import { Subject } from "./subject";

/** All checks, those first whose findings weigh most. */
const rules: readonly Rule[] = [
  ownFunction,
  errorValue,
  outsidePublished,
  typedOver,
  textAsNumber,
  units,
  unknownUnit,
  differs,
  blankReference,
  shortRange,
  typedNumber,
  implausible,
  scaleSlip,
  swallowedError,
  volatile,
  staleReview,
  unusedInput,
  longFormula,
  linkChain,
  adapted,
];

/** The checks by name, each with what it looks for. */
export const ruleList: readonly Pick<Rule, "name" | "about">[] = rules.map(({ name, about }) => ({ name, about }));

/** Said when the engine does not show how it reads formulas. */
function leftOut(): string {
  const names = rules.filter(({ readsParts }) => readsParts).map(({ name }) => name.replaceAll("-", " "));
  return say`This version of the calculation engine does not show how it reads a formula. Checks that look at single parts of formulas were left out or are not whole: ${names.join(", ")}.`;
}

export interface Audit {
  /** What stands open, in the order of pages and rows. */
  readonly open: readonly Finding[];
  /** What somebody has accepted, with the reason. */
  readonly accepted: readonly (Finding & { readonly acceptance: Accepted })[];
  readonly formulas: number;
  /** Rules that could not be applied in full, with the reason. */
  readonly note: string | undefined;
}

const rowOf = ({ cell }: Finding): number => Number(/\d+$/.exec(cell)?.[0] ?? 0);

/**
 * Audits a calculated notebook.
 *
 * @param wishes a notebook's own functions, and the shipped notebook that it is held against.
 */
export function auditNotebook(
  live: LiveNotebook,
  wishes: { readonly find?: FindFunction; readonly shipped?: Notebook } = {},
): Audit {
  const subject = new Subject(live, wishes.find, wishes.shipped);
  const { notebook } = live;
  const places = new Map(notebook.pages.map(({ name }, i) => [name, i]));
  const order = ({ page }: Finding): number => places.get(page) ?? places.size;
  const all = rules.flatMap((rule) => rule.find(subject)).sort((a, b) => order(a) - order(b) || rowOf(a) - rowOf(b));
  const judged = all.map((finding) => ({ finding, acceptance: acceptanceOf(notebook, finding) }));
  return {
    open: judged.flatMap(({ finding, acceptance }) => (acceptance ? [] : [finding])),
    accepted: judged.flatMap(({ finding, acceptance }) => (acceptance ? [{ ...finding, acceptance }] : [])),
    formulas: subject.forms.reduce((sum, { columns }) => sum + columns.length, 0),
    note: live.showsFormulas ? undefined : leftOut(),
  };
}
