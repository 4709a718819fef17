import type { AnyDefinition } from "../../formula/definition";
import { readExpression } from "../../formula/read";
import { readerText } from "../../formula/reader-text";
import type { Step } from "../../formula/steps";
import { choicesOf, columnNames } from "../../formula/steps/pick";
import { symbolText } from "../../formula/symbol-name";
import type { Table } from "../../formula/table";
import { open, plain, scaleOf } from "../../units/scale";
import { say } from "../../words/say";
import { asParsed } from "./as-parsed";
import type { UnitFinding } from "./judge";
import { type Measure, plainNumber, quantity, silent } from "./measure";
import { Walk } from "./walk";

/** The measure of a declared unit; a text or a key has none. */
function declared(unit: string | undefined): Measure {
  if (unit === undefined || unit === "text") return silent;
  if (unit === "any") return quantity(open);
  const scale = scaleOf(unit);
  return scale ? quantity(scale) : silent;
}

/** The audit of one function: what each name stands for so far, and what was found. */
class Steps {
  readonly names = new Map<string, Measure>();
  readonly findings: UnitFinding[] = [];

  constructor(definition: AnyDefinition) {
    for (const [name, argument] of Object.entries(definition.args)) {
      this.names.set(name, "unit" in argument ? declared(argument.unit) : silent);
    }
    for (const [name, { unit }] of Object.entries(definition.constants ?? {})) this.names.set(name, declared(unit));
  }

  /** Works out a formula; when a unit is wanted, holds the result against it. */
  formula(label: string, text: string, wanted?: Measure): void {
    const expression = readExpression(text);
    const parsed = asParsed(expression);
    const walk = new Walk({
      cell: () => silent,
      cells: () => [],
      named: (name) => this.names.get(name) ?? silent,
      words: (part) =>
        part.kind === "name" ? symbolText(part.name) : part.kind === "number" ? String(part.value) : say`a part`,
      text: () => undefined,
      find: () => undefined,
      conversions: false,
    });
    const result = walk.measure(parsed);
    if (wanted?.kind === "quantity" && wanted.scales[0]) {
      walk.judge.wanted(label, readerText(expression), result, wanted.scales[0]);
    }
    for (const { level, message } of walk.judge.findings)
      this.findings.push({ level, message: `${label}: ${message}` });
  }

  table(table: Table): void {
    for (const name of columnNames(table)) {
      this.names.set(name, declared(name === table.key.name ? (table.key.unit ?? "text") : table.columns[name]?.unit));
    }
  }

  step(step: Step): void {
    const symbol = "symbol" in step ? step.symbol : "condition";
    const unit = "unit" in step ? declared(step.unit) : silent;
    switch (step.kind) {
      case "algebra":
        this.formula(symbol, step.formula, unit);
        break;
      case "require":
        this.formula(symbol, step.holds);
        break;
      case "choose":
        for (const formula of Object.values(step.cases)) this.formula(symbol, formula, unit);
        break;
      case "root":
        this.formula(symbol, step.start, unit);
        this.names.set(symbol, unit);
        this.formula(symbol, step.next, unit);
        break;
      case "sum":
        this.formula(symbol, step.count, plainNumber);
        this.names.set(step.index, plainNumber);
        this.formula(symbol, step.term, unit);
        break;
      case "total":
        this.names.set(step.each, this.names.get(step.over) ?? silent);
        this.formula(symbol, step.term, unit);
        break;
      case "mean":
        this.formula(symbol, step.from, plainNumber);
        this.formula(symbol, step.to, plainNumber);
        this.names.set(step.angle, quantity(plain));
        this.formula(symbol, step.term, unit);
        if (step.weight !== undefined) this.formula(symbol, step.weight);
        break;
      case "first":
        for (const table of choicesOf(step.table)) {
          this.table(table);
          this.formula(symbol, step.where);
          this.column(symbol, table, step.take, unit);
        }
        break;
      case "lookup":
        this.key(symbol, step.key, step.table);
        for (const column of choicesOf(step.column)) this.column(symbol, step.table, column, unit);
        break;
      case "between":
        if ("table" in step.points) {
          this.formula(symbol, step.at, declared(step.points.table.key.unit));
          this.column(symbol, step.points.table, step.points.column, unit);
        } else {
          this.formula(symbol, step.at, this.names.get(step.points.xs));
        }
        break;
      case "convert":
      case "surface":
        break;
    }
    if ("symbol" in step) this.names.set(symbol, unit);
  }

  private key(symbol: string, key: string, table: Table): void {
    const measure = this.names.get(key) ?? silent;
    if (table.key.unit !== undefined && measure.kind === "quantity") {
      this.formula(symbol, key, declared(table.key.unit));
    }
  }

  private column(symbol: string, table: Table, column: string, unit: Measure): void {
    const own = declared(column === table.key.name ? table.key.unit : table.columns[column]?.unit);
    if (own.kind !== "quantity" || unit.kind !== "quantity") return;
    this.names.set(column, own);
    this.formula(symbol, column, unit);
    this.names.delete(column);
  }
}

/** The audit of units of a named function: every step against its declared unit. */
export function definitionFindings(definition: AnyDefinition): UnitFinding[] {
  const steps = new Steps(definition);
  for (const step of definition.steps) steps.step(step);
  return steps.findings;
}
