import { html, nothing, type TemplateResult } from "lit/html.js";
import { type Check, outcomeAmount } from "../../notebook/verdict";
import { say, sayAround } from "../../words/say";
import { cornerMark, openMark, ringMark } from "../marks";
import { capital, countWord } from "../shown/count-words";
import type { OptionStanding } from "../standing";
import { cellLink } from "./cell-link";

/** With more options than this, those that hold are counted in one line. */
const mostLines = 6;

/** More failing checks than this are counted at the end of the sentence; of open ones fewer say what is to be done. */
const mostShort = 5;
const mostOpen = 3;

const list = (checks: readonly Check[], most: number, part: (check: Check) => TemplateResult): TemplateResult =>
  html`${checks
    .slice(0, most)
    .map(
      (check, i) => html`${i > 0 ? ", " : ""}${part(check)}`,
    )}${checks.length > most ? say`, and ${countWord(checks.length - most)} more` : ""}`;

/** `one falls short`, `two fall short`. */
const shortCount = (count: number): string =>
  count === 1 ? say`${countWord(count)} falls short` : say`${countWord(count)} fall short`;

const lowerFirst = (text: string): string =>
  /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;

function link(check: Check, words: string, select: (check: Check) => void): TemplateResult {
  const { page, row, column, quantity } = check;
  const part = cellLink(page.name, { row, column }, lowerFirst(quantity), () => select(check));
  return html`${part}${words === "" || words.startsWith(",") ? "" : " "}${words}`;
}

/** The check with the least to spare; one that can only hold or not has 0 and says nothing about how near it is. */
function least(checks: readonly Check[]): Check | undefined {
  const margin = ({ outcome }: Check) =>
    outcome.kind === "holds" && outcome.margin > 0 ? outcome.margin : Number.POSITIVE_INFINITY;
  return checks.reduce<Check | undefined>((low, one) => (low && margin(low) <= margin(one) ? low : one), undefined);
}

function sentence({ checks, short, open }: OptionStanding, select: (check: Check) => void): TemplateResult {
  if (checks.length === 0) return html`<span class="soft">${say`no check applies`}</span>`;
  if (short.length === 0 && open.length === 0) {
    const tightest = least(checks);
    return html`<span class="holds">${ringMark} ${checks.length === 1 ? say`one check, it holds` : say`all ${countWord(checks.length)} hold`}${
      tightest
        ? html`${sayAround`; the least is ${link(tightest, `, ${outcomeAmount(tightest.outcome)}`, select)}`}`
        : nothing
    }</span>`;
  }
  const shortWords =
    short.length === 0
      ? nothing
      : html`<span class="short">${cornerMark} ${shortCount(short.length)}: ${list(short, mostShort, (check) => link(check, outcomeAmount(check.outcome), select))}</span>`;
  return html`${shortWords} ${open.length === 0 ? nothing : openWords(open, select)}`;
}

/** What is open, and why: once where the reason is the same for all. */
function openWords(open: readonly Check[], select: (check: Check) => void): TemplateResult {
  const reasons = [...new Set(open.map(({ outcome }) => outcomeAmount(outcome)))];
  const count = countWord(open.length);
  const [reason = ""] = reasons;
  const isShared = open.length > 1 && reasons.length === 1;
  const words = isShared ? say`${count} open, ${reason}` : say`${count} open`;
  return html`<span class="open">${openMark} ${words}: ${list(open, mostOpen, (check) =>
    link(check, isShared ? "" : `(${outcomeAmount(check.outcome)})`, select),
  )}</span>`;
}

/** What the page comes to: one sentence an option, its parts leading to their rows. */
export function verdictLines(
  standings: readonly OptionStanding[] | undefined,
  select: (check: Check) => void,
): TemplateResult | typeof nothing {
  if (!standings) return nothing;
  const line = (one: OptionStanding) => html`<div><dt>${one.option}</dt><dd>${sentence(one, select)}</dd></div>`;
  if (standings.length <= mostLines) return html`<dl class="verdict">${standings.map(line)}</dl>`;
  const failing = standings.filter(({ short, open }) => short.length + open.length > 0);
  const holding = standings.length - failing.length;
  return html`<dl class="verdict">
    ${failing.slice(0, mostLines - 1).map(line)}
    <div><dt>${say`Others`}</dt><dd>
      ${holding > 0 ? html`<span class="holds">${ringMark} ${say`${capital(countWord(holding))} of ${standings.length} hold`}</span>` : nothing}
      ${failing.length >= mostLines ? html`<span class="short">${cornerMark} ${say`${countWord(failing.length - mostLines + 1)} more fall short or stand open`}</span>` : nothing}
    </dd></div>
  </dl>`;
}
