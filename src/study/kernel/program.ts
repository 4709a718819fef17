import type { ParsedCell } from "../../engine/parsed";
import { say } from "../../words/say";
import type { Chain, ChainCell } from "./chain";
import { lower } from "./lower";
import { blank, finite, type Node, plain } from "./node";
import { isBlock, NotTaken } from "./part";
import { type Kinds, kindOf } from "./plain";
import { cellName, KernelRefusal } from "./refusal";

/** A chain with every formula decided, ready for one of the two writers. */
export interface Program {
  /** Kinds by input, in the order of the chain. Inputs have the first places. */
  readonly inputs: readonly Kinds[];
  /** One node a place, in order of calculation, behind the inputs. */
  readonly steps: readonly { readonly place: number; readonly name: string; readonly node: Node }[];
  /** What is asked for: places or fixed values. */
  readonly wanted: readonly Node[];
  readonly places: number;
}

const cellKey = (cell: ParsedCell): string => `${cell.sheet}:${cell.row}:${cell.column}`;

/**
 * Decides every formula of a chain.
 *
 * @param inputKinds what each input may be; what it is in the notebook when left out.
 * @throws KernelRefusal that names the cell and what is not taken in.
 */
export function programOf(chain: Chain, inputKinds?: readonly Kinds[]): Program {
  const nodes = new Map<string, Node>();
  const inputs = chain.inputs.map(({ value }, i) => inputKinds?.[i] ?? kindOf(value));
  chain.inputs.forEach(({ cell }, place) => {
    nodes.set(cellKey(cell), { op: "cell", place, kinds: inputs[place] ?? kindOf(null) });
  });
  for (const { cell, value } of chain.fixed) nodes.set(cellKey(cell), plain(value));
  const node = (cell: ParsedCell): Node => nodes.get(cellKey(cell)) ?? blank;

  const own = new Map(chain.own.map((one) => [one.name, one]));
  const steps: Program["steps"][number][] = [];
  let places = inputs.length;
  const settle = ({ cell, name }: ChainCell, found: Node): void => {
    // A cell that only repeats another, or never changes, needs no place of its own.
    if (found.op === "cell" || found.op === "plain") {
      nodes.set(cellKey(cell), finite(found));
      return;
    }
    const place = places++;
    steps.push({ place, name, node: finite(found) });
    nodes.set(cellKey(cell), { op: "cell", place, kinds: found.kinds });
  };
  for (const formula of chain.formulas) {
    try {
      const part = lower(formula.tree, node, (name) => own.get(name));
      if (isBlock(part)) throw new NotTaken(say`its result spills over several cells`);
      settle(formula, part);
    } catch (cause) {
      if (cause instanceof NotTaken) throw new KernelRefusal(cellName(chain.pages, formula.cell), cause.message);
      throw cause;
    }
  }
  return { inputs, steps, wanted: chain.wanted.map(({ cell }) => node(cell)), places };
}
