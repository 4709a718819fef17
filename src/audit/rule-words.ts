import { spoken } from "../words/language";
import { said } from "../words/say";

/** A rule's name in words: `short-range` as `short range`. */
export const ruleWords = (rule: string): string => said(rule.replaceAll("-", " "));

/** A rule where it is named and not spoken of: in English by the very name that files and JSON have. */
export const ruleNamed = (rule: string): string => (spoken().language === "en" ? rule : ruleWords(rule));
