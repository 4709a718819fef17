import type { Accepted } from "../notebook/about";
import { checkText } from "../notebook/limits";
import type { Notebook } from "../notebook/model";
import { Refusal } from "../notebook/refusal";
import { say } from "../words/say";
import { type Finding, placeOf } from "./finding";

/** A finding is accepted as it was read: when its evidence changes, it is open again. */
const matches = (accepted: Accepted, finding: Finding): boolean =>
  accepted.rule === finding.rule && accepted.at === placeOf(finding) && accepted.message === finding.message;

/** The acceptance of a finding, if there is one. */
export const acceptanceOf = (notebook: Notebook, finding: Finding): Accepted | undefined =>
  notebook.about.accepted?.find((one) => matches(one, finding));

const withAccepted = (notebook: Notebook, accepted: readonly Accepted[]): Notebook => ({
  ...notebook,
  about: { ...notebook.about, accepted: [...accepted] },
});

/**
 * Accepts findings with a reason, which is kept in the notebook.
 *
 * @param when date as text, `2026-11-25`.
 * @throws Refusal without a reason or a name.
 */
export function accept(
  notebook: Notebook,
  findings: readonly Finding[],
  reason: string,
  who: string,
  when: string,
): Notebook {
  if (reason.trim() === "") throw new Refusal(say`A finding is accepted with a reason; say why it may stand.`);
  if (who.trim() === "") throw new Refusal(say`A finding is accepted by a person; give a name.`);
  checkText(() => say`The reason`, reason);
  const kept = (notebook.about.accepted ?? []).filter((one) => !findings.some((finding) => matches(one, finding)));
  const added = findings.map((finding) => ({
    rule: finding.rule,
    at: placeOf(finding),
    message: finding.message,
    reason: reason.trim(),
    who: who.trim(),
    when,
  }));
  return withAccepted(notebook, [...kept, ...added]);
}

/** Opens findings again. */
export function unaccept(notebook: Notebook, findings: readonly Finding[]): Notebook {
  const old = notebook.about.accepted ?? [];
  const kept = old.filter((one) => !findings.some((finding) => matches(one, finding)));
  return kept.length === old.length ? notebook : withAccepted(notebook, kept);
}
