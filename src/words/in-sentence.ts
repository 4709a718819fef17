import { spoken } from "./language";

/** Languages that write every noun with a capital letter, wherever it stands. */
const capitalNouns: readonly string[] = ["de"];

/** A title as it stands inside a sentence: `Job sheet` as `job sheet` where the language writes it small. */
export const inSentence = (title: string): string =>
  capitalNouns.includes(spoken().language) ? title : title.toLowerCase();
