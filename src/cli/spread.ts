import { displayNumber } from "../notebook/display";
import { finish } from "../study/carry-out";
import { convergenceOf } from "../study/spread/convergence";
import { type SpreadAnswer, spread, type VariedInput } from "../study/spread/spread";
import { percentiles, type ResultSpread } from "../study/spread/summary";
import { isCommon, isSeed, isTrials, mostTrials, type StoredSpread, storedSpread } from "../study/stored";
import { inputsNamed, variedInputs } from "../study/varied";
import { varyAdvice } from "../study/vary";
import { listWords } from "../study/words";
import { say } from "../words/say";
import { columns, Misuse, type Output } from "./output";
import { numberFrom, type OpenStudy, openStudy, whyLine } from "./study";

export interface SpreadWishes {
  /** `Supply.run=10,11.5,14` */
  readonly vary: readonly string[];
  readonly common: string | undefined;
  readonly trials: string | undefined;
  readonly seed: string | undefined;
  readonly json: boolean;
}

function settingsFrom(stored: StoredSpread, wishes: SpreadWishes): Omit<StoredSpread, "vary"> {
  const common = numberFrom("--common", wishes.common) ?? stored.common;
  if (!isCommon(common)) throw new Misuse(say`--common ${common} (allowed 0 to 1: each by itself to all in step).`);
  const trials = numberFrom("--trials", wishes.trials) ?? stored.trials;
  if (!isTrials(trials)) throw new Misuse(say`--trials ${trials} (allowed whole numbers from 10 to ${mostTrials}).`);
  const seed = numberFrom("--seed", wishes.seed) ?? stored.seed;
  if (!isSeed(seed)) throw new Misuse(say`--seed ${seed}: write a whole number of at most nine digits.`);
  return { common, trials, seed };
}

/** Inputs to vary: those the notebook spreads by itself, those it stores, those the person names, the last word counts. */
function variedFrom({ notebook, subject }: OpenStudy, stored: StoredSpread, asked: readonly string[]): VariedInput[] {
  const named = asked.map((one): readonly [string, string] => {
    const split = one.indexOf("=");
    if (split < 0) throw new Misuse(say`--vary ${one}: after Page.key= ${varyAdvice}.`);
    const [pattern, text] = [one.slice(0, split), one.slice(split + 1)];
    if (inputsNamed(notebook, subject, pattern).length === 0) {
      throw new Misuse(say`--vary ${pattern}: no result hangs on it.`);
    }
    return [pattern, text];
  });
  const found = variedInputs(notebook, subject, [...Object.entries(stored.vary), ...named]);
  if (found.length === 0) {
    throw new Misuse(
      say`spread needs inputs that vary, for example --vary Supply.run=10,11.5,14 or --vary 'Estimate.*=±5%'.`,
    );
  }
  return found;
}

const percent = (share: number): string => `${displayNumber(100 * share, 1)} %`;

function spreadText(answer: SpreadAnswer, open: OpenStudy, varied: readonly VariedInput[]): string {
  const { results, trials, seed, common, allHold } = answer;
  const head = [
    say`Result`,
    say`Unit`,
    say`Now`,
    ...percentiles.map((share) => `P${100 * share}`),
    say`Check holds`,
    say`P80 is good to`,
    "",
  ];
  const now = open.runner.run(open.subject.inputs.map(({ value }) => value));
  const line = (one: ResultSpread, i: number): string[] => [
    one.name,
    one.unit,
    typeof now[i] === "number" ? displayNumber(now[i]) : "",
    ...one.percentiles.map((value) => (Number.isNaN(value) ? "" : displayNumber(value))),
    one.chance === undefined ? "" : percent(one.chance),
    `±${displayNumber(Number(one.error80.toPrecision(2)))}`,
    one.lost === 0 ? "" : say`${one.lost} trials without a result`,
  ];
  const rows = results.flatMap((one, i) =>
    one.most > one.least || (one.lost > 0 && one.lost < trials) ? [line(one, i)] : [],
  );
  const steady = results.filter(({ most, least, lost }) => most === least && lost === 0).map(({ name }) => name);
  const silent = results.filter(({ lost }) => lost === trials).map(({ name }) => name);
  const names = varied.map(({ input }) => open.subject.inputs[input]?.name ?? "");
  return [
    say`${open.option}: ${trials} trials, seed ${seed}, common cause ${common}; varied ${listWords(names)}.`,
    "",
    columns([head, ...rows], (column) => column >= 2 && column <= 8),
    "",
    ...(steady.length === 0 ? [] : [say`The same in every trial: ${steady.join(", ")}.`]),
    ...(silent.length === 0 ? [] : [say`Without a number: ${silent.join(", ")}.`]),
    ...(allHold === undefined ? [] : [say`All checks asked for hold in ${percent(allHold)} of the trials.`]),
    ...(common > 0 || varied.length < 2
      ? []
      : [say`Every input varied by itself; where one cause moves several together, say how far with --common 0 to 1.`]),
    "",
  ].join("\n");
}

/** `spread FOLDER Estimate.price_80@Cruiser --vary Supply.run=10,11.5,14`: how results spread with their inputs. */
export function spreadOut(output: Output, args: readonly string[], wishes: SpreadWishes): void {
  const [folder, address, ...more] = args;
  if (folder === undefined || address === undefined || more.length > 0) {
    throw new Misuse(
      say`spread takes a folder and results, for example spread sheets/three-hulls Estimate.price_80@Cruiser.`,
    );
  }
  const open = openStudy(output, folder, address);
  const stored = storedSpread(open.notebook);
  const settings = settingsFrom(stored, wishes);
  const varied = variedFrom(open, stored, wishes.vary);
  const answer = finish(spread(open.subject, open.runner, { ...settings, varied }));
  if (wishes.json) {
    const results = answer.results.map(({ values, ...one }) => ({ ...one, convergence: convergenceOf({ values }) }));
    output.write(`${JSON.stringify({ ...answer, results }, undefined, 2)}\n`);
    return;
  }
  output.write(`${whyLine(open.runner)}${spreadText(answer, open, varied)}`);
}
