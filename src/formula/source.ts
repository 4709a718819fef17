import { say } from "../words/say";

/**
 * Where a figure or a rule comes from.
 *
 * `published`: stands in the named text. `identity`: geometry, algebra or a definition.
 * `common practice`: the trade does so, no source. `memory`: recalled, not checked against the text.
 */
export type Evidence = "published" | "identity" | "common practice" | "memory";

export interface Source {
  readonly evidence: Evidence;
  /** Standard, or author and title. */
  readonly title: string;
  /** Clause, table or page. */
  readonly clause?: string;
  readonly edition?: string;
  /** What the reader should know before relying on it. */
  readonly note?: string;
}

/** Says the source in one line. */
export function sourceLine(source: Source): string {
  const place = [source.title, source.clause, source.edition].filter(Boolean).join(", ");
  const mark = {
    published: "",
    identity: "",
    "common practice": say`common practice, no source: `,
    memory: say`from memory, not confirmed: `,
  }[source.evidence];
  return `${mark}${place}${source.note ? ` (${source.note})` : ""}`;
}

/** A relation that needs no outside source: geometry, algebra or a definition. */
export const identity = (title: string): Source => ({ evidence: "identity", title });

/** A habit of the trade that has no source. */
export const commonPractice = (title: string): Source => ({ evidence: "common practice", title });
