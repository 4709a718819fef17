import { said } from "../../words/say";

const words = () => said("no one two three four five six seven eight nine ten eleven twelve").split(" ");

/** `two`, `seventeen` as 17. */
export const countWord = (count: number): string => words()[count] ?? String(count);

/** Begins with a capital letter. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
