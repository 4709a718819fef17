import { Refusal } from "../../notebook/refusal";
import { isCommon, isSeed, isTrials, mostTrials, type StoredSpread } from "../../study/stored";
import type { StudyInput } from "../../study/subject";
import { withDecimalSign } from "../../words/decimal-sign";
import { say } from "../../words/say";
import { readTyped } from "../typing/typed-text";
import { neededNumber } from "./typed-number";

/** How an input may turn out, as it is typed: three numbers, or a stated spread in their place. */
export interface TypedShape {
  readonly low: string;
  readonly likely: string;
  readonly high: string;
  readonly stated: string;
}

/** A stored text in the fields of the screen. */
export function shapeFields(text: string): TypedShape {
  const parts = text.split(",").map((part) => withDecimalSign(part.trim()));
  const [low = "", second = "", third] = parts;
  if (parts.length === 3) return { low, likely: second, high: third ?? "", stated: "" };
  if (parts.length === 2) return { low, likely: "", high: second, stated: "" };
  return { low: "", likely: "", high: "", stated: withDecimalSign(text) };
}

/** With a point; what is no number stays as it is, to be refused with what is allowed. */
function plainPart(part: string): string {
  const read = readTyped(part);
  if (read.kind === "ask") {
    throw new Refusal(say`"${part}" can be read two ways; write it without a sign between thousands.`);
  }
  return read.text;
}

/** The fields as one text; a blank likely value makes all values from low to high alike. */
export function shapeText({ low, likely, high, stated }: TypedShape): string {
  if (stated.trim() !== "") return stated.trim().replace(/(?<=\d),(?=\d)/g, ".");
  return [low, likely, high]
    .map((part) => plainPart(part.trim()))
    .filter((part) => part !== "")
    .join(",");
}

/** To begin with: a tenth to both sides of the value now, to be typed over. */
export function aboutNow({ value }: StudyInput): TypedShape {
  const now = typeof value === "number" ? value : 0;
  const text = (one: number) => withDecimalSign(String(Number(one.toPrecision(6))));
  const ends = [now * 0.9, now * 1.1].sort((a, b) => a - b).map(text);
  return { low: ends[0] ?? "", likely: withDecimalSign(String(now)), high: ends[1] ?? "", stated: "" };
}

/** Whether an input is measured in something: counts, dates, flags and words do not spread by a share of themselves. */
export const isMeasured = ({ value, unit, choices }: StudyInput): boolean =>
  typeof value === "number" &&
  value !== 0 &&
  !choices &&
  unit !== "" &&
  unit !== "date" &&
  (unit !== "1" || !Number.isInteger(value));

export interface TypedSettings {
  readonly trials: string;
  readonly common: string;
  readonly seed: string;
}

/** @throws Refusal with what is allowed. */
export function readSettings(typed: TypedSettings): Omit<StoredSpread, "vary"> {
  const trials = neededNumber(say`Trials`, typed.trials);
  if (!isTrials(trials)) throw new Refusal(say`Trials ${trials} (allowed whole numbers from 10 to ${mostTrials}).`);
  const common = neededNumber(say`Common cause`, typed.common);
  if (!isCommon(common))
    throw new Refusal(say`Common cause ${common} (allowed 0 to 1: each by itself to all in step).`);
  const seed = neededNumber(say`Seed`, typed.seed);
  if (!isSeed(seed)) throw new Refusal(say`Seed ${seed}: write a whole number of at most nine digits.`);
  return { trials, common, seed };
}
