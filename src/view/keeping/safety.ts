import type { Standing } from "../../notebook/keeping/standing";
import { say } from "../../words/say";

/** How safe the work is, and what the person reads of it. */
export interface Safety {
  /** `open`: not looked up yet. `closed`: this window may only read. `refused`: in this window only. */
  readonly kind: "open" | "kept" | "keeping" | "refused" | "closed";
  readonly sentence: string;
}

export function safetyOf(standing: Standing): Safety {
  switch (standing.kind) {
    case "kept":
      return { kind: "kept", sentence: say`Kept in this browser` };
    case "keeping":
      return { kind: "keeping", sentence: say`Keeping …` };
    case "reads":
      return {
        kind: "closed",
        sentence: standing.behind ? say`${standing.sentence} It was changed there since.` : standing.sentence,
      };
    default:
      return { kind: "refused", sentence: standing.sentence };
  }
}
