import type { Argument } from "../../formula/arguments";
import type { AnyDefinition, Constant } from "../../formula/definition";
import type { Source } from "../../formula/source";
import type { Step } from "../../formula/steps";
import { say } from "../../words/say";
import type { Page, Row } from "../model";
import { shippedFunction } from "../named-function";
import { functionParts, part } from "./function-page";
import type { OwnFunction } from "./own-function";
import { type OwnExample, readExample } from "./read-example";
import { RowMistake, readArgument, readConstant, readStep, StepCheck, sourceOf } from "./read-rows";

const noSource: Source = { evidence: "common practice", title: "none is named" };

/** What the rows of one function have said so far. */
class Reading {
  readonly args: Record<string, Argument> = {};
  readonly constants: Record<string, Constant> = {};
  readonly steps: Step[] = [];
  readonly examples: OwnExample[] = [];
  readonly exampleRows: number[] = [];
  readonly sources: Source[] = [];
  readonly withoutSource: number[] = [];
  valid = "";
  caution = "";
  private result: string | undefined;
  private readonly check = new StepCheck();

  row(row: Row, line: number): void {
    const kind = row[part.part] ?? "";
    switch (kind) {
      case "argument": {
        const [name, argument] = readArgument(row, shippedFunction);
        this.check.name(name, "argument");
        this.args[name] = argument;
        break;
      }
      case "constant": {
        const [name, constant] = readConstant(row, this.source(row, line));
        this.check.name(name, "constant");
        this.constants[name] = constant;
        break;
      }
      case "step":
      case "result":
      case "require":
        this.step(readStep(row, shippedFunction), kind);
        break;
      case "valid":
        this.valid = row[part.why] ?? "";
        break;
      case "caution":
        this.caution = row[part.why] ?? "";
        break;
      case "source":
        this.sources.push(this.source(row, line));
        break;
      case "example":
        this.examples.push(readExample(row, this.args, this.source(row, line)));
        this.exampleRows.push(line);
        break;
      default:
        throw new RowMistake(say`"${kind}" is no part of a function (there are ${functionParts.join(", ")})`);
    }
  }

  private step(step: Step, kind: string): void {
    if (this.result !== undefined && kind !== "require") {
      throw new RowMistake(
        say`${kind}: ${this.result} is the result already; the result is the last step, and there is one`,
      );
    }
    if (kind === "result" && "symbol" in step) this.result = step.symbol;
    this.check.step(step);
    this.steps.push(step);
  }

  private source(row: Row, line: number): Source {
    const source = sourceOf(row[part.source] ?? "");
    if (!source) this.withoutSource.push(line);
    return source ?? noSource;
  }

  get isWhole(): boolean {
    return this.result !== undefined;
  }
}

/**
 * Reads the function that begins in a row of a function page and goes on to the next one.
 *
 * @param name what it is called, held to be free.
 * @param refused why the name cannot be taken.
 */
export function readFunction(
  page: Page,
  name: string,
  from: number,
  to: number,
  refused: string | undefined,
): OwnFunction {
  const reading = new Reading();
  const head = page.rows[from] as Row;
  let line = from;
  const about = { name, page: page.name, row: from };
  try {
    if (refused !== undefined) throw new RowMistake(refused);
    const title = (head[part.why] ?? "").trim();
    if (title === "") throw new RowMistake(say`${name}: say in the column Why what the function gives`);
    const source = sourceOf(head[part.source] ?? "");
    if (source) reading.sources.push(source);
    for (line = from + 1; line < to; line++) {
      const row = page.rows[line] as Row;
      if (row.some((text) => text !== "")) reading.row(row, line);
    }
    line = from;
    if (!reading.isWhole) throw new RowMistake(say`${name}: no row is its result; name the last step result`);
    if (reading.sources.length === 0) reading.withoutSource.push(from);
    const definition = {
      name,
      title,
      args: reading.args,
      constants: reading.constants,
      steps: reading.steps,
      valid: reading.valid || "Nothing is said of where it may be used.",
      sources: reading.sources.length > 0 ? reading.sources : [noSource],
      examples: reading.examples,
      ...(reading.caution && { caution: reading.caution }),
      ownOf: page.name,
    } as unknown as AnyDefinition;
    const { exampleRows, withoutSource } = reading;
    return { ...about, definition, mistake: undefined, exampleRows, withoutSource };
  } catch (cause) {
    if (!(cause instanceof RowMistake)) throw cause;
    return {
      ...about,
      definition: undefined,
      mistake: { row: line, sentence: cause.message },
      exampleRows: [],
      withoutSource: [],
    };
  }
}
