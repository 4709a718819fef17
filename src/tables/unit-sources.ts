import type { Source } from "../formula/source";

/** Texts that units and their factors rest on. */
export const openFormula: Source = {
  evidence: "published",
  title: "OASIS OpenDocument 1.3, part 4: Recalculated Formula (OpenFormula)",
  clause: "CONVERT",
  edition: "2021",
  note: "list of unit symbols as public programs and the committee's open archive give it",
};

export const nistSp811: Source = {
  evidence: "published",
  title: "NIST Special Publication 811, Guide for the use of the International System of Units",
  clause: "appendix B",
  edition: "2008",
};
