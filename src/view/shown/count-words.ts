const words = "no one two three four five six seven eight nine ten eleven twelve".split(" ");

/** `two`, `seventeen` as 17. */
export const countWord = (count: number): string => words[count] ?? String(count);

/** `1 row`, `3 rows`. */
export const counted = (count: number, thing: string, things = `${thing}s`): string =>
  `${count} ${count === 1 ? thing : things}`;

/** Begins with a capital letter. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
