import { Refusal } from "../../notebook/refusal";
import { isCommon, isSeed, isTrials, mostTrials, type StoredSpread } from "../../study/stored";
import type { StudyInput } from "../../study/subject";
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
  const parts = text.split(",").map((part) => part.trim());
  const [low = "", second = "", third] = parts;
  if (parts.length === 3) return { low, likely: second, high: third ?? "", stated: "" };
  if (parts.length === 2) return { low, likely: "", high: second, stated: "" };
  return { low: "", likely: "", high: "", stated: text };
}

/** The fields as one text; a blank likely value makes all values from low to high alike. */
export function shapeText({ low, likely, high, stated }: TypedShape): string {
  if (stated.trim() !== "") return stated.trim();
  return [low, likely, high]
    .map((part) => part.trim().replace(",", "."))
    .filter((part) => part !== "")
    .join(",");
}

/** What the notebook says of an input: its limits with its value between them, where it has such. */
export function notebookShape({ value, low, likely, high }: StudyInput): string | undefined {
  const middle = likely ?? value;
  if (low === undefined || high === undefined || typeof middle !== "number") return undefined;
  return low <= middle && middle <= high && low < high ? `${low},${middle},${high}` : undefined;
}

export interface TypedSettings {
  readonly trials: string;
  readonly common: string;
  readonly seed: string;
}

/** @throws Refusal with what is allowed. */
export function readSettings(typed: TypedSettings): Omit<StoredSpread, "vary"> {
  const trials = neededNumber("Trials", typed.trials);
  if (!isTrials(trials)) throw new Refusal(`Trials ${trials} (allowed whole numbers from 10 to ${mostTrials}).`);
  const common = neededNumber("Common cause", typed.common);
  if (!isCommon(common)) throw new Refusal(`Common cause ${common} (allowed 0 to 1: each by itself to all in step).`);
  const seed = neededNumber("Seed", typed.seed);
  if (!isSeed(seed)) throw new Refusal(`Seed ${seed}: write a whole number of at most nine digits.`);
  return { trials, common, seed };
}
