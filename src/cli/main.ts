import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { Refusal } from "../notebook/refusal";
import type { Language } from "../words/language";
import { retold } from "../words/retold";
import { say } from "../words/say";
import { languageOf, languageOfWork, speakWith } from "./language";
import { Misuse, type Output } from "./output";

const terminal: Output = {
  write: (text) => {
    process.stdout.write(text);
  },
  path: (typed) => resolve(process.env.INIT_CWD ?? process.cwd(), typed),
  input: async () => readFileSync(0, "utf8"),
};

const isKnown = (cause: unknown): boolean => cause instanceof Misuse || cause instanceof Refusal;

/** Tells a person what went wrong; what was made in English for programs is told again. */
async function tell(cause: unknown, language: Language): Promise<void> {
  await speakWith(language);
  const message = retold(cause instanceof Error ? cause.message : String(cause));
  process.stderr.write(isKnown(cause) ? `${message}\n` : `${say`The program failed in itself: ${message}`}\n`);
  process.exitCode = 1;
}

const args = process.argv.slice(2);
let language: Language = "en";
try {
  language = languageOf(args);
  await speakWith(languageOfWork(args, language));
  // Texts are made while the rest of the program loads, so the language is there before any of it.
  const { run } = await import("./run");
  await run(args, terminal, language);
} catch (cause) {
  await tell(cause, language);
}
