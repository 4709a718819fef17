import type { Notebook } from "../notebook/model";

/** What a notebook keeps of its spread, so that the same numbers come again: `settings.spread` of notebook.json. */
export interface StoredSpread {
  readonly seed: number;
  readonly trials: number;
  readonly common: number;
  /** By address, as text: `"Supply.run": "10,11.5,14"`. */
  readonly vary: Readonly<Record<string, string>>;
}

const plainSpread: StoredSpread = { seed: 1, trials: 10_000, common: 0, vary: {} };

const wholeNumber = (value: unknown, least: number, most: number): value is number =>
  typeof value === "number" && Number.isInteger(value) && value >= least && value <= most;

export const mostTrials = 1_000_000;
/** Limits of a seed: the generator takes 32 bits. */
export const isSeed = (value: unknown): value is number => wholeNumber(value, -(2 ** 31), 2 ** 31 - 1);
export const isTrials = (value: unknown): value is number => wholeNumber(value, 10, mostTrials);
export const isCommon = (value: unknown): value is number => typeof value === "number" && value >= 0 && value <= 1;

/** The notebook's spread; what it does not say, or says wrongly, is as in `plainSpread`. */
export function storedSpread(notebook: Notebook): StoredSpread {
  const kept = notebook.about.settings?.spread;
  if (typeof kept !== "object" || kept === null) return plainSpread;
  const { seed, trials, common, vary } = kept as Record<string, unknown>;
  const varied = typeof vary === "object" && vary !== null ? Object.entries(vary) : [];
  return {
    seed: isSeed(seed) ? seed : plainSpread.seed,
    trials: isTrials(trials) ? trials : plainSpread.trials,
    common: isCommon(common) ? common : plainSpread.common,
    vary: Object.fromEntries(varied.filter(([, text]) => typeof text === "string")) as Record<string, string>,
  };
}

/** Keeps a spread in the notebook. */
export function storeSpread(notebook: Notebook, spread: StoredSpread): Notebook {
  if (JSON.stringify(storedSpread(notebook)) === JSON.stringify(spread)) return notebook;
  return { ...notebook, about: { ...notebook.about, settings: { ...notebook.about.settings, spread } } };
}
