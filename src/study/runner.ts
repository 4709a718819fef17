import { Engine, type SheetTexts } from "../engine/engine";
import type { CellValue } from "../engine/value";
import type { Chain } from "./kernel/chain";
import { compileKernel, type Kernel, textIsAllowed, type Variant } from "./kernel/kernel";
import { Beyond } from "./kernel/library";
import type { Kinds, Plain } from "./kernel/plain";
import { KernelRefusal } from "./kernel/refusal";

/** Gives the results of one set of inputs, whoever calculates them. */
export interface Runner {
  readonly by: Variant | "engine";
  /** Why the engine calculates, where it does. */
  readonly why: string | undefined;
  /** Results in the order of the chain; NaN for an error. */
  readonly run: (inputs: readonly Plain[]) => Plain[];
  /** The same, numbers alone: NaN also for a text, a flag or a blank. */
  readonly runNumbers: (inputs: readonly Plain[], into: Float64Array) => void;
  /** The same with the engine's own words for an error. */
  readonly explain: (inputs: readonly Plain[]) => CellValue[];
  readonly close: () => void;
}

const plainValue = (value: CellValue): Plain => {
  switch (value.kind) {
    case "number":
    case "flag":
      return value.value;
    case "text":
      return value.text;
    case "blank":
      return null;
    case "error":
      return Number.NaN;
  }
};

const numberOf = (value: Plain): number => (typeof value === "number" ? value : Number.NaN);

/** A chain calculated by an engine of its own, built when it is first needed. */
class EngineRun {
  private engine: Engine | undefined;
  private readonly held: Plain[];

  constructor(
    private readonly chain: Chain,
    private readonly sheets: readonly SheetTexts[],
  ) {
    this.held = chain.inputs.map(({ value }) => value);
  }

  values(inputs: readonly Plain[]): CellValue[] {
    this.engine ??= new Engine(this.sheets, this.chain.own);
    const changed = this.chain.inputs.flatMap(({ cell }, i) => {
      const value = inputs[i] ?? null;
      return Object.is(value, this.held[i]) ? [] : [{ ...cell, value, i }];
    });
    for (const { i, value } of changed) this.held[i] = value;
    this.engine.put(changed.map(({ i: _, ...cell }) => cell));
    return this.chain.wanted.map(({ cell }) => (this.engine as Engine).value(cell));
  }

  close(): void {
    this.engine?.dispose();
  }
}

function kernelOf(chain: Chain, inputKinds: readonly Kinds[] | undefined): Kernel | KernelRefusal {
  try {
    return compileKernel(chain, textIsAllowed() ? "text" : "closures", inputKinds);
  } catch (cause) {
    if (cause instanceof KernelRefusal) return cause;
    throw cause;
  }
}

/**
 * Whatever calculates a chain fastest here: a kernel from text, a kernel of closures, or the engine where a formula
 * is not taken in. Sets of inputs that a kernel leaves to the engine go there one by one.
 *
 * @param sheets the notebook's pages as texts.
 * @param inputKinds what each input may be; what it is in the notebook when left out.
 */
export function runnerOf(chain: Chain, sheets: readonly SheetTexts[], inputKinds?: readonly Kinds[]): Runner {
  const byEngine = new EngineRun(chain, sheets);
  const explain = (inputs: readonly Plain[]) => byEngine.values(inputs);
  const close = () => byEngine.close();
  const kernel = kernelOf(chain, inputKinds);
  if (kernel instanceof KernelRefusal) {
    const run = (inputs: readonly Plain[]) => explain(inputs).map(plainValue);
    const runNumbers = (inputs: readonly Plain[], into: Float64Array) => into.set(run(inputs).map(numberOf));
    return { by: "engine", why: kernel.message, run, runNumbers, explain, close };
  }
  const run = (inputs: readonly Plain[]): Plain[] => {
    try {
      return kernel.run(inputs);
    } catch (cause) {
      if (cause instanceof Beyond) return explain(inputs).map(plainValue);
      throw cause;
    }
  };
  const runNumbers = (inputs: readonly Plain[], into: Float64Array): void => {
    try {
      kernel.runNumbers(inputs, into);
    } catch (cause) {
      if (!(cause instanceof Beyond)) throw cause;
      into.set(explain(inputs).map(plainValue).map(numberOf));
    }
  };
  return { by: kernel.variant, why: undefined, run, runNumbers, explain, close };
}
