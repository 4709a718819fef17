/**
 * What a cell holds while a kernel runs: a number, text, flag, or `null` for a blank cell. NaN stands for every
 * error; no number is infinite or minus zero.
 */
export type Plain = number | string | boolean | null;

/** Which of these a value can be; an error is possible always and needs no kind. */
export type Kinds = number;
export const kinds = { number: 1, text: 2, flag: 4, blank: 8, any: 15 } as const;

export function kindOf(value: Plain): Kinds {
  if (value === null) return kinds.blank;
  if (typeof value === "number") return kinds.number;
  return typeof value === "string" ? kinds.text : kinds.flag;
}

export const isError = (value: Plain): boolean => Number.isNaN(value);

/** For each place, every kind that occurs there in some sets of values. */
export const kindsIn = (sets: readonly (readonly Plain[])[]): Kinds[] =>
  sets.reduce<Kinds[]>((found, set) => {
    set.forEach((value, i) => {
      found[i] = (found[i] ?? 0) | kindOf(value);
    });
    return found;
  }, []);
