import type { Argument } from "../../formula/arguments";
import type { Constant } from "../../formula/definition";
import type { Source } from "../../formula/source";
import type { Step } from "../../formula/steps";
import { say } from "../../words/say";
import type { Row } from "../model";
import { shippedFunction } from "../named-function";
import { functionParts, part } from "./function-page";
import { type OwnExample, readExample } from "./read-example";
import { RowMistake, readArgument, readConstant, readStep, StepCheck, sourceOf } from "./read-rows";

/** Parts whose name other rows use. */
const namedParts: ReadonlySet<string> = new Set(["argument", "constant", "step", "result"]);

/** Stands where a row names no source. */
export const noSource: Source = { evidence: "common practice", title: "none is named" };

/** What the rows of one function have said so far. */
export class Reading {
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
  private areArgumentsWhole = true;
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
        // What is given is read by the arguments: with one of them unread it tells nothing.
        if (!this.areArgumentsWhole) break;
        this.examples.push(readExample(row, this.args, this.source(row, line)));
        this.exampleRows.push(line);
        break;
      default:
        throw new RowMistake(say`"${kind}" is no part of a function (there are ${functionParts.join(", ")})`);
    }
  }

  private step(step: Step, kind: string): void {
    if (this.result && kind !== "require") {
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

  /** After a mistake in a row: what only follows from it is not told. */
  excuse(row: Row): void {
    const kind = row[part.part] ?? "";
    // A part that is not known may have been meant as any other.
    const isKnown = functionParts.includes(kind);
    const name = row[part.name] ?? "";
    if (namedParts.has(kind) || (!isKnown && name !== "")) this.check.excuse(name);
    if (kind === "result" || !isKnown) this.result ??= "";
    if (kind === "argument" || !isKnown) this.areArgumentsWhole = false;
  }

  get isWhole(): boolean {
    return this.result !== undefined;
  }
}
