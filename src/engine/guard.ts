// Past 150 lines: one file is all that puts limits into the engine, so that a new version is looked at in one place.

import {
  ArraySize,
  CellError,
  ErrorType,
  FunctionPlugin,
  HyperFormula,
  type SimpleCellAddress,
  SimpleRangeValue,
} from "hyperformula";
import { say } from "../words/say";
import { OutOfTime, step } from "./allowance";
import { limits } from "./limits";
import { settings } from "./settings";

interface Ast {
  readonly type: string;
  readonly procedureName?: string;
  readonly args?: readonly Ast[];
}

/** What a formula needs, as the engine finds it while it reads. */
interface Dependency {
  readonly absolutize: (home: SimpleCellAddress) => { readonly width?: () => number; readonly height?: () => number };
}

interface Parser {
  parse: (text: string, home: SimpleCellAddress) => { readonly dependencies: readonly Dependency[] };
}

type Evaluate = (this: Interpreter, ast: Ast, state: unknown) => unknown;
type Combine = (this: unknown, op: unknown, left: unknown, right: unknown, state: unknown) => unknown;

/** The private members of the engine through which every part of every formula goes. */
interface Interpreter {
  evaluateAst: Evaluate;
  binaryRangeWrapper: Combine;
}

/** Says how many cells a result takes, before it is calculated. */
interface Sizes {
  checkArraySize: (...args: unknown[]) => ArraySize;
}

interface Functions {
  calculateSingleCellOfResultArray: (...args: unknown[]) => unknown;
  calculateSizeOfVectorizedResultArray: (...args: unknown[]) => [number, number];
}

const tooMany = (cells: number): CellError =>
  new CellError(ErrorType.NUM, say`${cells} cells are meant at once (allowed ${limits.cells}): use a smaller range`);

const sizeOf = (value: unknown): readonly [number, number] =>
  value instanceof SimpleRangeValue ? [value.height(), value.width()] : [1, 1];

/** Functions that make more cells than they are given say here how many. */
const made: Readonly<Record<string, (values: readonly unknown[]) => number>> = {
  SEQUENCE: ([rows, columns]) => (Number(rows) || 1) * (Number(columns) || 1),
  MMULT: ([left, right]) => sizeOf(left)[0] * sizeOf(right)[1],
};

/** Why a function is not even begun, or undefined. */
function refusal(interpreter: Interpreter, { procedureName = "", args = [] }: Ast, state: unknown) {
  const count = made[procedureName];
  const cells = count?.(args.slice(0, 2).map((arg) => interpreter.evaluateAst(arg, state))) ?? 0;
  return cells > limits.cells ? tooMany(cells) : undefined;
}

/** The one place where time and size of a calculation are held, and where nothing is thrown into the engine but that. */
function guardParts(interpreter: Interpreter): void {
  const evaluate = interpreter.evaluateAst;
  interpreter.evaluateAst = function guarded(ast, state) {
    step();
    try {
      const refused = ast.type === "FUNCTION_CALL" ? refusal(this, ast, state) : undefined;
      const value = refused ?? evaluate.call(this, ast, state);
      return typeof value === "string" && value.length > limits.text
        ? new CellError(ErrorType.VALUE, say`the text has ${value.length} letters (allowed ${limits.text}): shorten it`)
        : value;
    } catch (cause) {
      if (cause instanceof OutOfTime) throw cause;
      const problem = cause instanceof Error ? cause.message : String(cause);
      return cause instanceof TooMany
        ? tooMany(cause.cells)
        : new CellError(ErrorType.ERROR, say`this failed in itself (${problem}): write it in another way`);
    }
  };
  const combine = interpreter.binaryRangeWrapper;
  interpreter.binaryRangeWrapper = function guarded(op, left, right, state) {
    if (left instanceof SimpleRangeValue || right instanceof SimpleRangeValue) {
      const [a, b] = [sizeOf(left), sizeOf(right)];
      checkSize(Math.max(a[0], b[0]) * Math.max(a[1], b[1]));
    }
    return combine.call(this, op, left, right, state);
  };
}

class TooMany extends Error {
  constructor(readonly cells: number) {
    super("too many cells");
  }
}

function checkSize(cells: number): void {
  if (cells > limits.cells) throw new TooMany(cells);
}

/** A function over many cells is a step for each of them. */
function guardFunctions(functions: Functions): void {
  const { calculateSingleCellOfResultArray: single, calculateSizeOfVectorizedResultArray: size } = functions;
  functions.calculateSingleCellOfResultArray = function guarded(this: unknown, ...args) {
    step();
    return single.apply(this, args);
  };
  functions.calculateSizeOfVectorizedResultArray = function guarded(this: unknown, ...args) {
    const [height, width] = size.apply(this, args);
    checkSize(height * width);
    return [height, width];
  };
}

/** Cells of the largest block that a formula names. Whole columns and rows end with the page. */
const largest = (dependencies: readonly Dependency[], home: SimpleCellAddress): number =>
  dependencies.reduce((most, dependency) => {
    const range = dependency.absolutize(home);
    const cells = (range.width?.() ?? 1) * (range.height?.() ?? 1);
    return Number.isFinite(cells) ? Math.max(most, cells) : most;
  }, 1);

/** The engine notes every cell of a block by itself: a block that is too large is an error before it is noted. */
function guardReading(parser: Parser): void {
  const { parse } = parser;
  parser.parse = function guarded(this: unknown, text, home) {
    const read = parse.call(this, text, home);
    const cells = largest(read.dependencies, home);
    if (cells <= limits.cells) return read;
    const ast = { type: "ERROR_WITH_RAW_INPUT", rawInput: text.slice(1), error: tooMany(cells) };
    return { ...read, ast, dependencies: [] };
  };
}

/** A result that is too large takes one cell, in which its error stands. */
function guardSizes(sizes: Sizes): void {
  const check = sizes.checkArraySize;
  sizes.checkArraySize = function guarded(this: unknown, ...args) {
    const size = check.apply(this, args);
    return size.width * size.height > limits.cells ? new ArraySize(1, 1) : size;
  };
}

/** Whether this engine can be guarded; results do not depend on it. */
let guarded = false;

/**
 * Puts the limits into the engine, once for the whole process. It has no place for them of its own, so they go where all
 * formulas pass; `tests/engine/limits.test.ts` proves that they hold.
 */
export function guardEngine(): boolean {
  if (guarded) return true;
  const probe = HyperFormula.buildEmpty(settings) as unknown as {
    readonly _parser?: object;
    readonly _evaluator?: { readonly interpreter?: { readonly arraySizePredictor?: object } };
  };
  const inner = probe._evaluator?.interpreter ?? {};
  const interpreter = Object.getPrototypeOf(inner) as Partial<Interpreter>;
  const parser = Object.getPrototypeOf(probe._parser ?? {}) as Partial<Parser>;
  const sizes = Object.getPrototypeOf(inner.arraySizePredictor ?? {}) as Partial<Sizes>;
  const functions = FunctionPlugin.prototype as unknown as Partial<Functions>;
  guarded =
    typeof interpreter.evaluateAst === "function" &&
    typeof interpreter.binaryRangeWrapper === "function" &&
    typeof parser.parse === "function" &&
    typeof sizes.checkArraySize === "function" &&
    typeof functions.calculateSingleCellOfResultArray === "function" &&
    typeof functions.calculateSizeOfVectorizedResultArray === "function";
  if (guarded) {
    guardParts(interpreter as Interpreter);
    guardReading(parser as Parser);
    guardSizes(sizes as Sizes);
    guardFunctions(functions as Functions);
  }
  (probe as unknown as HyperFormula).destroy();
  return guarded;
}
