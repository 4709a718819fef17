import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { Refusal } from "../notebook/refusal";
import { calculate } from "./calc";
import { evaluate } from "./eval";
import { list } from "./list";
import { Misuse, type Output } from "./output";
import { writeProof } from "./proof";

const usage = `Athwart on the terminal
  eval '=FORMULA'                one value
  eval --lines                   one formula a line from standard input, one JSON object a line
  calc FOLDER [--set Page.key@Option=value]... [--page NAME] [--json]
                                 the pages of a notebook, calculated
  list [--json]                  all named functions with arguments, units and sources
  proof FOLDER                   writes the pages Proof and Tables of a notebook anew from the functions
`;

/** Runs one command. @throws Misuse, Refusal */
async function run(args: readonly string[], output: Output): Promise<void> {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      lines: { type: "boolean", default: false },
      json: { type: "boolean", default: false },
      set: { type: "string", multiple: true, default: [] },
      page: { type: "string" },
      help: { type: "boolean", default: false },
    },
  });
  const [command, ...rest] = positionals;
  const folder = (): string => {
    const [only, ...more] = rest;
    if (only === undefined || more.length > 0)
      throw new Misuse(`${command} takes one folder, for example sheets/three-hulls.`);
    return only;
  };
  if (values.help || command === undefined) {
    output.write(usage);
    return;
  }
  switch (command) {
    case "eval":
      return evaluate(output, rest, values.lines);
    case "calc":
      return calculate(output, folder(), { set: values.set, json: values.json, page: values.page });
    case "list":
      return list(output, values.json);
    case "proof":
      return writeProof(output, folder());
    default:
      throw new Misuse(`There is no command "${command}" (there are eval, calc, list, proof).`);
  }
}

const terminal: Output = {
  write: (text) => {
    process.stdout.write(text);
  },
  path: (typed) => resolve(process.env.INIT_CWD ?? process.cwd(), typed),
  input: async () => readFileSync(0, "utf8"),
};

try {
  await run(process.argv.slice(2), terminal);
} catch (cause) {
  const known =
    cause instanceof Misuse ||
    cause instanceof Refusal ||
    (cause as { code?: string }).code?.startsWith("ERR_PARSE_ARGS");
  const message = cause instanceof Error ? cause.message : String(cause);
  process.stderr.write(known ? `${message}\n` : `The program failed in itself: ${message}\n`);
  process.exitCode = 1;
}
