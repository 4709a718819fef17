import type { Finding } from "../../audit/finding";
import { pageById } from "../../notebook/model";
import { retold } from "../../words/retold";
import type { Desk } from "../desk";
import { positionOf } from "./standing-findings";

/**
 * A finding, which the audit words in English, in the language that is spoken. What a function page has wrong is asked
 * of the notebook itself, where the names in it are told from words.
 */
export const findingWords = (desk: Pick<Desk, "notebook" | "live">, finding: Finding): string =>
  saidByRow(desk, finding) ?? retold(finding.message);

/** What the row of a finding says already, audit or not; undefined where it says nothing. */
export function saidByRow({ notebook, live }: Pick<Desk, "notebook" | "live">, finding: Finding): string | undefined {
  const at =
    finding.rule === "own-function" && finding.severity === "error" ? positionOf(notebook, finding) : undefined;
  const page = at && pageById(notebook, at.page);
  const remark = page && live?.ownRemark(page, at.row);
  return remark && remark.kind !== "holds" ? remark.sentence : undefined;
}
