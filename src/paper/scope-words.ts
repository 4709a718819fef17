import { say } from "../words/say";
import type { Line } from "./line";

const meanings: Readonly<Record<string, string>> = {
  in: say`in the price`,
  out: say`not in the price`,
  owner: say`by the owner`,
};

/** What a row of the scope says, in the words of an agreement; any other row as it stands. */
export const scopeWords = ({ key, words }: Line): string =>
  key.startsWith("scope_") ? (meanings[words] ?? (words || say`not settled`)) : words;
