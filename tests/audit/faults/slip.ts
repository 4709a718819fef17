import type { LiveNotebook } from "../../../src/notebook/live";
import type { Reference } from "../../../src/notebook/references";
import type { Place, Random } from "./fault";

/** What a slip did to a formula: all that its evidence may be told from. */
export type Trace =
  | { readonly what: "number"; readonly value: number; readonly around: readonly string[] }
  | {
      readonly what: "reference";
      readonly before: Reference;
      readonly after: Reference;
      readonly around: readonly string[];
    }
  | {
      readonly what: "range";
      readonly before: Reference;
      readonly after: Reference;
      readonly around: readonly string[];
    }
  | { readonly what: "swap"; readonly pair: readonly [Reference, Reference] }
  | { readonly what: "operator"; readonly from: string; readonly right: string }
  | { readonly what: "thousand"; readonly dropped: boolean }
  | { readonly what: "sign" }
  | { readonly what: "hidden error" };

export interface Slip {
  readonly text: string;
  readonly trace: Trace;
}

export type MakeSlip = (random: Random, live: LiveNotebook, place: Place) => Slip | undefined;
