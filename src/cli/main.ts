// Past 150 lines: every command with its words and choices, in one table.
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { Refusal } from "../notebook/refusal";
import { printAudit } from "./audit";
import { calculate } from "./calc";
import { writeClass, writeTask } from "./course";
import { evaluate } from "./eval";
import { list } from "./list";
import { markFiles } from "./mark";
import { whatMoves } from "./moves";
import { calculateOptions } from "./options";
import { Misuse, type Output } from "./output";
import { ownOnTerminal } from "./own";
import { printPaper } from "./print";
import { writeProof } from "./proof";
import { solveBack } from "./solve";
import { spreadOut } from "./spread";
import { unfoldRow } from "./unfold";
import { printWorking } from "./working";

const usage = `Athwart on the terminal
  eval '=FORMULA'                one value
  eval --lines                   one formula a line from standard input, one JSON object a line
  calc FOLDER [--set Page.key@Option=value]... [--page NAME] [--json]
                                 the pages of a notebook, calculated
  working FOLDER Page.key@Option [--json]
                                 how a cell comes to its value, step by step
  unfold FOLDER Page.key [--function NAME] [--write FOLDER]
                                 the steps of a named function as rows of plain formulas in its place; --write
                                 keeps the notebook with them
  audit FOLDER [--json] [--record] [--against FOLDER]
                                 what the checks find; --record as a sheet to sign, --against lists what was
                                 adapted; ends with 1 when there is an error
  options FOLDER --from FILE.csv [--rows 'Compare.*'] [--base OPTION]
                                 results of many options as CSV: a column option, then Page.key columns; what
                                 the file leaves out is the base option's
  solve FOLDER Page.key@Option=VALUE --by Page.key [--low N --high N] [--at-most] [--json]
                                 the input that gives a result; checks@Option instead: the smallest that
                                 makes all checks hold
  moves FOLDER Page.key@Option [--csv] [--json]
                                 what moves a result, input by input
  spread FOLDER 'Page.*@Option' --vary Page.key=LOW,LIKELY,HIGH... [--common 0..1] [--trials N] [--seed N] [--json]
                                 how results spread, and the chance that checks hold; also =LOW,HIGH =±5% =LIKELY±SPREAD
  own FOLDER [--copy NAME --as NEW.NAME | --begin NEW.NAME] [--write FOLDER]
                                 the notebook's own functions with their examples; --copy writes one down under
                                 another name, --begin a small new one, --write keeps the notebook with it
  list [WORD]... [--of FOLDER] [--json]
                                 the named functions that say all the words: arguments, units, mathematics, limits,
                                 sources, an example; all of them without words; --of: a notebook's own functions too
  print FOLDER --layout NAME --option OPTION [--paper A4|Letter|A3] [--out FILE] [--html]
                                 a sheet for the shop or the customer as PDF, as HTML where there is no browser:
                                 job-sheet, materials, estimate, hand-over, service, templates
  proof FOLDER                   writes the pages Proof and Tables of a notebook anew from the functions
  task COURSE [TASK] --for TRAINEE [--print] [--html] [--hints N] [--solution]
                                 a trainee's file as CSV; --print and --html a sheet, --solution the trainer's
  class COURSE CLASS.csv [--into FOLDER [--solution]]
                                 all trainees' numbers and answers; --into writes each trainee's file and sheet
  mark COURSE FILE... [--class CLASS.csv] [--csv] [--json]
                                 marks the files that came back, mistakes by name
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
      vary: { type: "string", multiple: true, default: [] },
      common: { type: "string" },
      trials: { type: "string" },
      seed: { type: "string" },
      function: { type: "string" },
      write: { type: "string" },
      copy: { type: "string" },
      as: { type: "string" },
      of: { type: "string" },
      begin: { type: "string" },
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
  const { print, html, hints, solution } = values;
  const sheets = { trainee: values.for, print, html, hints, solution };
  switch (command) {
    case "eval":
      return evaluate(output, rest, values.lines);
    case "calc":
      return calculate(output, folder(), { set: values.set, json: values.json, page: values.page });
    case "working":
      return printWorking(output, rest, values.json);
    case "unfold":
      return unfoldRow(output, rest, { named: values.function, write: values.write });
    case "audit":
      if (printAudit(output, folder(), values)) process.exitCode = 1;
      return;
    case "options":
      return calculateOptions(output, folder(), { from: values.from, rows: values.rows, base: values.base });
    case "solve": {
      const { by, low, high, "at-most": atMost, json } = values;
      return solveBack(output, rest, { by, low, high, atMost, json });
    }
    case "moves":
      return whatMoves(output, rest, { csv: values.csv, json: values.json });
    case "spread": {
      const { vary, common, trials, seed, json } = values;
      return spreadOut(output, rest, { vary, common, trials, seed, json });
    }
    case "own": {
      const { copy, as, begin, write } = values;
      return ownOnTerminal(output, folder(), { copy, as, begin, write });
    }
    case "list":
      return list(output, rest, values.json, values.of);
    case "print": {
      const { layout, option, paper, out } = values;
      return printPaper(output, folder(), { layout, option, paper, out, html });
    }
    case "proof":
      return writeProof(output, folder());
    case "task":
      return writeTask(output, rest, sheets);
    case "class":
      return writeClass(output, rest, values.into, sheets);
    case "mark":
      return markFiles(output, rest, { classList: values.class, csv: values.csv, json: values.json });
    default:
      throw new Misuse(
        `There is no command "${command}" (there are eval, calc, working, unfold, audit, options, solve, moves, spread, own, list, print, proof, task, class, mark).`,
      );
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
