import { expect, it } from "vitest";
import { bareTexts } from "./bare-texts";

/** Texts that stay as they are in every language, each with its reason. */
const allowed: readonly (readonly [file: RegExp, text: RegExp, why: string])[] = [
  [/^cli\/language\.ts$/, /^--language /, "no language is chosen yet"],
  [
    /^notebook\/own\/read-function\.ts$/,
    /^Nothing is said of/,
    "stands in a definition, which is said where it is shown",
  ],
  [/^figures\/pot-life\.ts$/, /^min$/, "a unit"],
  [/^view\/shell\.ts$/, /^Athwart$/, "the name of the program"],
];

const folders = [
  "audit",
  "cli",
  "course",
  "engine",
  "figures",
  "formula",
  "notebook",
  "paper",
  "study",
  "units",
  "view",
];

it.each(folders)("says every text of src/%s that is shown, read out or thrown", (folder) => {
  const bare = bareTexts(folder).filter(
    ({ file, text }) => !allowed.some(([where, what]) => where.test(file) && what.test(text)),
  );
  expect(bare.map(({ file, text }) => `${file}: ${text}`)).toEqual([]);
});
