import type { Parsed } from "../engine/parsed";
import type { CellValue } from "../engine/value";
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

/** Which of the arguments of a call count now: of IF only the branch that is taken. */
export function countsNow(live: LiveNotebook, call: Extract<Parsed, { kind: "call" }>): (argument: number) => boolean {
  const [test] = call.args;
  if (call.name !== "IF" || !test) return () => true;
  const [value] = partValues(live, test);
  const holds = value?.kind === "flag" ? value.value : value?.kind === "number" ? value.value !== 0 : undefined;
  return (argument) => argument === 0 || (holds !== undefined && argument === (holds ? 1 : 2));
}
