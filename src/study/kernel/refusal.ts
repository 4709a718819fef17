import type { ParsedCell } from "../../engine/parsed";
import { columnName, pagePrefix } from "../../notebook/references";
import { say } from "../../words/say";

/** The cell as a formula names it: `Supply!E25`. */
export const cellName = (pages: readonly string[], cell: ParsedCell): string =>
  `${pagePrefix(pages[cell.sheet] ?? "")}${columnName(cell.column)}${cell.row + 1}`;

/** A formula that the kernel does not take in; the engine calculates the study instead. */
export class KernelRefusal extends Error {
  override readonly name = "KernelRefusal";

  constructor(
    /** `Supply!E25` */
    readonly cell: string,
    readonly reason: string,
  ) {
    super(say`${cell}: ${reason}; the engine calculates this study instead, which takes longer.`);
  }
}
