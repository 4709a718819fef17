import { say } from "../words/say";

/** What is typed, and what it gives. */
const commands = (): readonly (readonly [form: string, words: string])[] => [
  [say`eval '=FORMULA'`, say`one value`],
  ["eval --lines", say`one formula a line from standard input, one JSON object a line`],
  [say`calc FOLDER [--set Page.key@Option=value]... [--page NAME] [--json]`, say`the pages of a notebook, calculated`],
  [say`working FOLDER Page.key@Option [--json]`, say`how a cell comes to its value, step by step`],
  [
    say`unfold FOLDER Page.key [--function NAME] [--write FOLDER]`,
    say`the steps of a named function as rows of plain formulas in its place; --write keeps the notebook with them`,
  ],
  [
    say`audit FOLDER [--json] [--record] [--against FOLDER]`,
    say`what the checks find; --record as a sheet to sign, --against lists what was adapted; ends with 1 when there is an error`,
  ],
  [
    say`options FOLDER --from FILE.csv [--rows 'Compare.*'] [--base OPTION]`,
    say`results of many options as CSV: a column option, then Page.key columns; what the file leaves out is the base option's`,
  ],
  [
    say`solve FOLDER Page.key@Option=VALUE --by Page.key [--low N --high N] [--at-most] [--json]`,
    say`the input that gives a result; checks@Option instead: the smallest that makes all checks hold`,
  ],
  [say`moves FOLDER Page.key@Option [--csv] [--json]`, say`what moves a result, input by input`],
  [
    say`spread FOLDER 'Page.*@Option' --vary Page.key=LOW,LIKELY,HIGH... [--common 0..1] [--trials N] [--seed N] [--json]`,
    say`how results spread, and the chance that checks hold; also =LOW,HIGH =±5% =LIKELY±SPREAD`,
  ],
  [
    say`own FOLDER [--copy NAME --as NEW.NAME | --begin NEW.NAME] [--write FOLDER]`,
    say`the notebook's own functions with their examples; --copy writes one down under another name, --begin a small new one, --write keeps the notebook with it`,
  ],
  [
    say`list [WORD]... [--of FOLDER] [--json]`,
    say`the named functions that say all the words: arguments, units, mathematics, limits, sources, an example; all of them without words; --of: a notebook's own functions too`,
  ],
  [
    say`print FOLDER --layout NAME --option OPTION [--paper A4|Letter|A3] [--out FILE] [--html]`,
    say`a sheet for the shop or the customer as PDF, as HTML where there is no browser: job-sheet, materials, estimate, hand-over, service, templates`,
  ],
  [say`proof FOLDER`, say`writes the pages Proof and Tables of a notebook anew from the functions`],
  [
    say`task COURSE [TASK] --for TRAINEE [--print] [--html] [--hints N] [--solution]`,
    say`a trainee's file as CSV; --print and --html a sheet, --solution the trainer's`,
  ],
  [
    say`class COURSE CLASS.csv [--into FOLDER [--solution]]`,
    say`all trainees' numbers and answers; --into writes each trainee's file and sheet`,
  ],
  [
    say`mark COURSE FILE... [--class CLASS.csv] [--csv] [--json]`,
    say`marks the files that came back, mistakes by name`,
  ],
];

/** Columns of a line, and the column where the words of a command begin. */
const width = 118;
const begins = 33;

function wrapped(words: string, indent: number): string {
  const lines: string[] = [];
  let line = "";
  for (const word of words.split(" ")) {
    if (line !== "" && indent + line.length + 1 + word.length > width) {
      lines.push(line);
      line = word;
    } else line += line === "" ? word : ` ${word}`;
  }
  return [...lines, line].join(`\n${" ".repeat(indent)}`);
}

function commandText([form, words]: readonly [string, string]): string {
  const head = `  ${form}`;
  const gap = head.length < begins - 1 ? " ".repeat(begins - head.length) : `\n${" ".repeat(begins)}`;
  return `${head}${gap}${wrapped(words, begins)}`;
}

/** All commands with their words and choices, as `--help` prints them. */
export const usage = (): string =>
  [
    say`Athwart on the terminal`,
    ...commands().map(commandText),
    "",
    wrapped(
      say`Every command takes --language en|de: English, where nothing is said, or German with a decimal comma in what a person reads. What is typed has a decimal point in both, and so have JSON and CSV, whose names stay English.`,
      0,
    ),
    "",
  ].join("\n");
