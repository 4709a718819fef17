import type { Language } from "../words/language";
import { say } from "../words/say";
import { readArguments } from "./arguments";
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
import { usage } from "./usage";
import { printWorking } from "./working";

/**
 * Runs one command.
 *
 * @param language of what a person reads; the work itself may be done in another one.
 * @throws Misuse, Refusal
 */
export async function run(args: readonly string[], output: Output, language: Language): Promise<void> {
  const { values, positionals } = readArguments(args);
  const [command, ...rest] = positionals;
  const folder = (): string => {
    const [only, ...more] = rest;
    if (only === undefined || more.length > 0)
      throw new Misuse(say`${command ?? ""} takes one folder, for example sheets/three-hulls.`);
    return only;
  };
  if (values.help || command === undefined) {
    output.write(usage());
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
      if (await printAudit(output, folder(), { ...values, language })) process.exitCode = 1;
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
        say`There is no command "${command}" (there are eval, calc, working, unfold, audit, options, solve, moves, spread, own, list, print, proof, task, class, mark).`,
      );
  }
}
