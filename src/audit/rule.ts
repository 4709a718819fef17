import type { Finding } from "./finding";
import type { Subject } from "./subject";

/** One check on a notebook. */
export interface Rule {
  /** As findings and accepted findings name it. */
  readonly name: string;
  /** What it looks for, for the list of rules. */
  readonly about: string;
  /** Looks at single parts of formulas, which not every version of the calculation engine shows. */
  readonly readsParts?: true;
  readonly find: (subject: Subject) => readonly Finding[];
}
