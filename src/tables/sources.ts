import type { Source } from "../formula/source";

/** Texts that several tables and functions rest on. */
export const iec60228: Source = {
  evidence: "published",
  title: "IEC 60228, Conductors of insulated cables",
  clause: "tables 2 and 3",
  edition: "2004",
};
