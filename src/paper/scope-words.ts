import type { Line } from "./line";

const meanings: Readonly<Record<string, string>> = {
  in: "in the price",
  out: "not in the price",
  owner: "by the owner",
};

/** What a row of the scope says, in the words of an agreement; any other row as it stands. */
export const scopeWords = ({ key, words }: Line): string =>
  key.startsWith("scope_") ? (meanings[words] ?? (words || "not settled")) : words;
