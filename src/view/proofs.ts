import type { LiveNotebook } from "../notebook/live";
import { isOptionPage, type Page } from "../notebook/model";

/** How the proofs of a free sheet come out: cells below a title `Verdict` that read `agrees` or `differs`. */
export interface Proofs {
  readonly agree: number;
  readonly differ: number;
}

/** Undefined for a page without proofs. */
export function proofsOf(live: LiveNotebook, page: Page): Proofs | undefined {
  const column = isOptionPage(page) ? -1 : (page.rows[0]?.indexOf("Verdict") ?? -1);
  if (column < 0) return undefined;
  const words = page.rows.map((_, row) => {
    const value = live.value({ page: page.id, row, column });
    return value.kind === "text" ? value.text : value.kind === "error" ? "differs" : "";
  });
  const agree = words.filter((word) => word === "agrees").length;
  const differ = words.filter((word) => word === "differs").length;
  return agree + differ > 0 ? { agree, differ } : undefined;
}
