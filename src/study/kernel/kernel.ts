import type { Chain } from "./chain";
import { closures } from "./closures";
import { Beyond } from "./library";
import type { Node } from "./node";
import { numbersOnly } from "./numbers-only";
import { type Kinds, kindOf, kinds, type Plain } from "./plain";
import { programOf } from "./program";
import { script } from "./script";
import { asHeld, newStore, put } from "./store";

/** How a kernel was made: as JavaScript text, or as closures where text may not become code. */
export type Variant = "text" | "closures";

/** The chain of one option as one plain function of its inputs. */
export interface Kernel {
  readonly chain: Chain;
  readonly variant: Variant;
  /**
   * The wanted results for one set of inputs, both in the order of the chain; NaN where the engine shows an error.
   *
   * @throws Beyond for a set that only the engine can judge.
   */
  readonly run: (inputs: readonly Plain[]) => Plain[];
  /** The same, numbers alone: NaN also for a text, a flag or a blank. */
  readonly runNumbers: (inputs: readonly Plain[], into: Float64Array) => void;
}

/** Whether text may become code here; tried once. A page's content policy may forbid it. */
export function textIsAllowed(): boolean {
  try {
    return new Function("return 1")() === 1;
  } catch {
    return false;
  }
}

/** Where a result is found: a place, or a value that never changes. */
interface End {
  readonly place: number;
  readonly isNumber: boolean;
  readonly canBeNumber: boolean;
  readonly fixed: Plain;
}

function endOf(node: Node): End {
  const canBeNumber = (node.kinds & kinds.number) !== 0;
  if (node.op === "plain") return { place: -1, isNumber: false, canBeNumber, fixed: node.value };
  if (node.op !== "cell") throw new Error("only cells and fixed values are asked for");
  return { place: node.place, isNumber: node.kinds === kinds.number, canBeNumber, fixed: null };
}

/**
 * Compiles a chain. Both variants give the same bits, which are the engine's.
 *
 * @param inputKinds what each input may be; what it is in the notebook when left out.
 * @throws KernelRefusal for a formula that is not taken in.
 */
export function compileKernel(chain: Chain, variant: Variant, inputKinds?: readonly Kinds[]): Kernel {
  const program = programOf(chain, inputKinds);
  const store = newStore(program.places);
  const write = variant === "text" ? script : closures;
  const calculate = write(program, store);
  let calculateNumbers: (() => void) | undefined;
  const { numbers, others } = store;
  const kindAt = program.inputs;
  const ends = program.wanted.map(endOf);
  const read = (end: End): Plain =>
    end.place < 0 ? end.fixed : ((end.isNumber ? numbers : others)[end.place] as Plain);
  const giveInputs = (inputs: readonly Plain[]): void => {
    for (let place = 0; place < kindAt.length; place++) {
      const kind = kindAt[place] as Kinds;
      const value = inputs[place] ?? null;
      if (kind === kinds.number && typeof value === "number") numbers[place] = value + 0;
      else if ((kindOf(value) & kind) !== 0) put(store, place, kind, asHeld(value));
      else throw new Beyond(`${chain.inputs[place]?.name} is of another kind`);
    }
  };
  const run = (inputs: readonly Plain[]): Plain[] => {
    giveInputs(inputs);
    calculate();
    return ends.map(read);
  };
  const runNumbers = (inputs: readonly Plain[], into: Float64Array): void => {
    calculateNumbers ??= write(numbersOnly(program), store);
    giveInputs(inputs);
    calculateNumbers();
    for (let i = 0; i < ends.length; i++) {
      const end = ends[i] as End;
      if (end.isNumber) into[i] = numbers[end.place] as number;
      else {
        const value = end.canBeNumber ? read(end) : null;
        into[i] = typeof value === "number" ? value : Number.NaN;
      }
    }
  };
  return { chain, variant, run, runNumbers };
}
