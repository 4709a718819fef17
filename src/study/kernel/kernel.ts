import type { Chain } from "./chain";
import { closures } from "./closures";
import { Beyond } from "./library";
import { type Kinds, kindOf, type Plain } from "./plain";
import { programOf } from "./program";
import { script } from "./script";
import { get, newStore, put } from "./store";

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
}

/** Whether text may become code here; tried once. A page's content policy may forbid it. */
export function textIsAllowed(): boolean {
  try {
    return new Function("return 1")() === 1;
  } catch {
    return false;
  }
}

/**
 * Compiles a chain. Both variants give the same bits, which are the engine's.
 *
 * @param kinds what each input may be; what it is in the notebook when left out.
 * @throws KernelRefusal for a formula that is not taken in.
 */
export function compileKernel(chain: Chain, variant: Variant, kinds?: readonly Kinds[]): Kernel {
  const program = programOf(chain, kinds);
  const store = newStore(program.places);
  const calculate = (variant === "text" ? script : closures)(program, store);
  const run = (inputs: readonly Plain[]): Plain[] => {
    program.inputs.forEach((kind, place) => {
      const value = inputs[place] ?? null;
      if ((kindOf(value) & kind) === 0) throw new Beyond(`${chain.inputs[place]?.name} is of another kind`);
      put(store, place, kind, value);
    });
    calculate();
    return program.wanted.map((node) => get(store, node));
  };
  return { chain, variant, run };
}
