/**
 * What went wrong, by kind: `kind` wrong sort of input, `range` outside what is allowed or no solution,
 * `missing` no entry in a table.
 */
export type FaultCode = "kind" | "range" | "missing";

/**
 * The one way a named function refuses. Not an Error: it carries a sentence for the person at the cell,
 * needs no stack, and is thrown often enough in sweeps for the stack to cost.
 */
export class Fault {
  constructor(
    readonly code: FaultCode,
    readonly sentence: string,
  ) {}
}
