import { displayNumber } from "../notebook/display";
import { counted, say } from "../words/say";
import type { Move, MovesAnswer } from "./moves";
import type { SideBySide } from "./side-by-side";
import type { SpreadAnswer } from "./spread/spread";
import type { TwoInputsAnswer } from "./two-inputs";
import { listWords, quantityWords } from "./words";

/** Six digits are more than a sentence needs. */
const brief = (value: number, unit: string): string => quantityWords(Number(value.toPrecision(4)), unit);

/** A number to three digits of the range that it spreads over, so that neighbouring figures read as different. */
export function withinRange(value: number, least: number, most: number): string {
  const range = most - least;
  if (!(range > 0) || !Number.isFinite(range)) return displayNumber(value);
  const decimals = Math.min(12, Math.max(0, 2 - Math.floor(Math.log10(range))));
  return displayNumber(Number(value.toFixed(decimals)));
}

export const percentWords = (share: number): string => `${displayNumber(100 * share, 1)} %`;

function moveWords({ over, percent }: Move, unit: string): string {
  if (over !== undefined) return say`by ${brief(over, unit)} over its plausible range`;
  return say`by ${brief(Math.abs(percent ?? 0), unit)} for one percent of it`;
}

/** What a ranking of inputs comes to, in one sentence. */
export function movesSentence({ result, unit, moves, still }: MovesAnswer): string {
  const lost = moves.filter(({ over, low }) => over === undefined && low !== undefined);
  const [first, ...others] = moves.filter((one) => !lost.includes(one));
  const without =
    lost.length === 0
      ? ""
      : say` ${counted(lost.length, "input leaves", "inputs leave")} it without a result at an end of their range.`;
  if (!first) return say`Nothing moves ${result} by a known amount.${without}`;
  const next = others.slice(0, 2).map(({ name }) => name);
  const then = next.length === 0 ? "" : say`; then ${listWords(next)}`;
  const rest =
    still.length === 0 ? "" : say` ${counted(still.length, "other input does", "other inputs do")} not move it.`;
  return say`${first.name} moves ${result} most, ${moveWords(first, unit)}${then}.${without}${rest}`;
}

/** What a spread comes to, for its first result and for the checks together. */
export function spreadSentence({ results, trials, allHold }: SpreadAnswer): string {
  const [first] = results;
  const checks = results.filter(({ isCheck }) => isCheck).length;
  const held =
    allHold === undefined
      ? ""
      : say` ${checks === 1 ? say`The check holds` : say`All ${checks} checks hold`} in ${percentWords(allHold)} of the trials.`;
  if (!first || first.lost === trials)
    return say`${first?.name ?? say`The result`} has a number in none of the trials.${held}`;
  const [p10 = 0, p50 = 0, p80 = 0] = first.percentiles;
  const says = (value: number) => {
    const words = withinRange(value, first.least, first.most);
    return first.unit === "" || first.unit === "1" || first.isCheck ? words : `${words} ${first.unit}`;
  };
  const lost = first.lost === 0 ? "" : say` ${counted(first.lost, "trial has", "trials have")} no result.`;
  if (first.least === first.most) return say`${first.name} is ${says(p50)} in every trial.${lost}${held}`;
  return say`${first.name}: as likely over as under ${says(p50)}; one in ten lies below ${says(p10)}, eight in ten below ${says(p80)}.${lost}${held}`;
}

/** Where all checks hold, and what the result is there. */
export function twoInputsSentence({ result, results, holds, short, checks }: TwoInputsAnswer): string {
  const all = results.flat();
  const known = all.filter((value) => !Number.isNaN(value));
  const within = all.filter((value, i) => holds.flat()[i] && !Number.isNaN(value));
  const span = (values: readonly number[]) =>
    say`${result.name} from ${brief(Math.min(...values), "")} to ${brief(Math.max(...values), result.unit)}`;
  const never = short.length === 0 ? "" : say` Whatever the two are, short: ${listWords(short)}.`;
  if (known.length === 0) return say`${result.name} has a number nowhere in these ranges.${never}`;
  if (checks === 0) return say`${span(known)}; no check is looked at.${never}`;
  const which = short.length === 0 ? say`All checks` : say`The other checks`;
  if (within.length === 0) return say`${which} hold together nowhere in these ranges; ${span(known)}.${never}`;
  return say`${which} hold in ${within.length} of ${all.length} places, with ${span(within)}.${never}`;
}

/** Who is best and who is ruled out. */
export function sideBySideSentence({ options, base }: SideBySide): string {
  const best = options.filter(({ isBest }) => isBest).map(({ name }) => name);
  const out = options.filter(({ ruledOutBy }) => ruledOutBy.length > 0);
  const outWords =
    out.length === 0
      ? say`no option is ruled out`
      : say`ruled out: ${out.map(({ name, ruledOutBy }) => say`${name} (${counted(ruledOutBy.length, "check falls", "checks fall")} short)`).join(", ")}`;
  const others = options.length - 1;
  const compared = others === 0 ? "" : say` ${counted(others, "option is", "options are")} compared with ${base}.`;
  return best.length > 0
    ? say`Best: ${listWords(best)}; ${outWords}.${compared}`
    : `${outWords.charAt(0).toUpperCase()}${outWords.slice(1)}.${compared}`;
}
