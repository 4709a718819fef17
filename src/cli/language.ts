import { useDecimalSign } from "../words/decimal-sign";
import { isLanguage, type Language, languageNames, speak } from "../words/language";
import { Misuse } from "./output";

/** Commands that write what programs, or the notebook itself, read again: the same in every language. */
const forPrograms = ["options", "proof"];

/** What follows `--language`, wherever it stands; texts are made while the program loads, so this comes before all. */
function wanted(args: readonly string[]): string | undefined {
  const end = args.indexOf("--");
  const typed = end < 0 ? args : args.slice(0, end);
  const at = typed.findLastIndex((arg) => arg === "--language" || arg.startsWith("--language="));
  return at < 0 ? undefined : (typed[at]?.split("=")[1] ?? typed[at + 1] ?? "");
}

/** The language that the person asked for; English where nothing is said. @throws Misuse */
export function languageOf(args: readonly string[]): Language {
  const language = wanted(args) ?? "en";
  if (!isLanguage(language)) {
    const known = Object.entries(languageNames).map(([code, name]) => `${code} (${name})`);
    throw new Misuse(`--language ${language}: choose ${known.join(" or ")}.`);
  }
  return language;
}

/**
 * The language in which the work itself is done. What programs read (JSON, CSV, answers line by line) is the same in
 * every language, and an audit knows accepted findings again by their English words; what a person reads of these is
 * told again.
 */
export function languageOfWork(args: readonly string[], language: Language): Language {
  const isRead = ["--json", "--csv", "--lines"].some((choice) => args.includes(choice));
  const command = args.find((arg, i) => !arg.startsWith("-") && args[i - 1] !== "--language") ?? "";
  const isTable = command === "class" && !args.some((arg) => /^--into(=|$)/.test(arg));
  return isRead || isTable || command === "audit" || forPrograms.includes(command) ? "en" : language;
}

/** Speaks a language from now on, with the decimal sign that belongs to it. */
export async function speakWith(language: Language): Promise<void> {
  useDecimalSign(language === "de" ? "," : ".");
  await speak(language);
}
