import { parseArgs } from "node:util";
import { say } from "../words/say";
import { Misuse } from "./output";

const choices = {
  lines: { type: "boolean", default: false },
  json: { type: "boolean", default: false },
  set: { type: "string", multiple: true, default: [] as string[] },
  page: { type: "string" },
  for: { type: "string" },
  print: { type: "boolean", default: false },
  html: { type: "boolean", default: false },
  hints: { type: "string" },
  solution: { type: "boolean", default: false },
  into: { type: "string" },
  class: { type: "string" },
  csv: { type: "boolean", default: false },
  record: { type: "boolean", default: false },
  against: { type: "string" },
  layout: { type: "string" },
  option: { type: "string" },
  paper: { type: "string" },
  out: { type: "string" },
  from: { type: "string" },
  rows: { type: "string" },
  base: { type: "string" },
  by: { type: "string" },
  low: { type: "string" },
  high: { type: "string" },
  "at-most": { type: "boolean", default: false },
  vary: { type: "string", multiple: true, default: [] as string[] },
  common: { type: "string" },
  trials: { type: "string" },
  seed: { type: "string" },
  function: { type: "string" },
  write: { type: "string" },
  copy: { type: "string" },
  as: { type: "string" },
  of: { type: "string" },
  begin: { type: "string" },
  language: { type: "string" },
  help: { type: "boolean", default: false },
} as const;

const parsed = (args: readonly string[]) =>
  parseArgs({ args: [...args], allowPositionals: true, options: choices, strict: true });

export type Arguments = ReturnType<typeof parsed>;

const isChoice = (name: string): name is keyof typeof choices => Object.hasOwn(choices, name);

/** What is wrong with the choices as they were typed; node's own sentences are English. */
function checkChoices(args: readonly string[]): void {
  const { tokens } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: choices,
    strict: false,
    tokens: true,
  });
  for (const token of tokens) {
    if (token.kind !== "option") continue;
    const { rawName, name, value, inlineValue } = token;
    if (!isChoice(name)) {
      throw new Misuse(
        say`${rawName} is not known; --help lists what there is, and -- ends it for a text that begins so.`,
      );
    }
    if (choices[name].type === "boolean") {
      if (value !== undefined) throw new Misuse(say`${rawName} takes no value; leave "${value}" out.`);
    } else if (value === undefined) {
      throw new Misuse(say`${rawName} needs a value after it.`);
    } else if (!inlineValue && /^-./.test(value)) {
      throw new Misuse(
        say`${rawName} has no value before ${value}; a value that begins so is written ${rawName}=${value}.`,
      );
    }
  }
}

/** Reads what was typed. @throws Misuse */
export function readArguments(args: readonly string[]): Arguments {
  checkChoices(args);
  return parsed(args);
}
