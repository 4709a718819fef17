import type { Standing } from "../../notebook/keeping/standing";
import { say } from "../../words/say";

/** How safe the work is, and what the person reads of it. */
export interface Safety {
  /**
   * `open`: not looked up yet. `closed`: this window may only read; `behind`: it shows an older state than there is.
   * `refused`: in this window only. `taken`: so as well, because another window has the notebook.
   */
  readonly kind: "open" | "kept" | "keeping" | "refused" | "taken" | "closed" | "behind";
  /** In three or four words, for the place where it always stands. */
  readonly brief: string;
  /** What happened and what to do. */
  readonly sentence: string;
}

const wordless = { open: () => "", kept: () => say`Kept in this browser`, keeping: () => say`Keeping …` } as const;

/** A safety whose few words say it all. */
export function calm(kind: keyof typeof wordless): Safety {
  const brief = wordless[kind]();
  return { kind, brief, sentence: brief };
}

export const refused = (sentence: string): Safety => ({ kind: "refused", brief: say`In this window only`, sentence });

/** Whether there is something that the person should do. */
export const isAlarming = ({ kind }: Safety): boolean => !(kind in wordless);

export function safetyOf(standing: Standing): Safety {
  switch (standing.kind) {
    case "kept":
    case "keeping":
      return calm(standing.kind);
    case "reads":
      return standing.behind
        ? {
            kind: "behind",
            brief: say`To be read only`,
            sentence: say`${standing.sentence} It was changed there since.`,
          }
        : { kind: "closed", brief: say`To be read only`, sentence: standing.sentence };
    case "taken":
      return { kind: "taken", brief: say`In this window only`, sentence: standing.sentence };
    default:
      return refused(standing.sentence);
  }
}
