import type { Parsed } from "../engine/parsed";
import type { CellValue } from "../engine/value";
import { asksFailure, isBranch } from "./branches";
import { cellName } from "./cell-name";
import { cellFormula, cellsIn } from "./formula-words";
import type { LiveNotebook } from "./live";
import type { Position } from "./model";

/** A value as a formula meets it: an error says in which cell it stands when it began there. */
function asRead(live: LiveNotebook, at: Position): CellValue {
  const value = live.value(at);
  return value.kind === "error" && value.from === ""
    ? { ...value, from: cellName(live.notebook, at)?.cell ?? "" }
    : value;
}

/** The values that a part of a formula has now: one, or those of a range cell by cell. */
export function partValues(live: LiveNotebook, parsed: Parsed): CellValue[] {
  const { notebook } = live;
  switch (parsed.kind) {
    case "brackets":
      return partValues(live, parsed.of);
    case "reference": {
      const { sheet, row, column } = parsed.at;
      return [asRead(live, { page: notebook.pages[sheet]?.id ?? "", row, column })];
    }
    case "range":
      return cellsIn(notebook, parsed.from, parsed.to).map((at) => asRead(live, at));
    case "blank":
      return [{ kind: "blank" }];
    default:
      return live.calculate(`=${cellFormula(notebook, parsed)}`).flat();
  }
}

type Call = Extract<Parsed, { kind: "call" }>;

/** The same choice with the numbers of the arguments as branches, so that the engine itself says which one it takes. */
function choiceOf({ name, args }: Call): Parsed {
  const asks = asksFailure.get(name);
  if (asks) {
    const fails: Parsed = { kind: "call", name: asks, args: args.slice(0, 1) };
    return { kind: "call", name: "IF", args: [fails, { kind: "number", value: 1 }, { kind: "number", value: 0 }] };
  }
  const marked = args.map((one, i): Parsed => (isBranch(name, i, args.length) ? { kind: "number", value: i } : one));
  return { kind: "call", name, args: marked };
}

/**
 * Which of the arguments of a call count now: of the branches of a choice only those that are taken, of the cases of
 * SWITCH none behind the one that fits. All conditions count, since an error in any of them is the cell's.
 */
export function countsNow(live: LiveNotebook, call: Call): (argument: number) => boolean {
  const { name, args } = call;
  const isOne = (argument: number) => isBranch(name, argument, args.length);
  if (!args.some((_, i) => isOne(i))) return () => true;
  // Over a block of cells there are as many choices as cells.
  const values = live.calculate(`=${cellFormula(live.notebook, choiceOf(call))}`).flat();
  const taken = values.flatMap((one) => (one.kind === "number" ? [one.value] : []));
  const last = name === "SWITCH" && taken.length === values.length ? Math.max(...taken) : args.length;
  return (argument) => (isOne(argument) ? taken.includes(argument) : argument < last);
}
