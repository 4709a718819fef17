import type { Severity } from "../../audit/finding";
import type { Review } from "../../audit/review";
import { firstOption, type Notebook, optionsOf, pageByName } from "../../notebook/model";
import { referencesOf } from "../../notebook/references";
import { rowOfKey } from "../../notebook/rows";
import { type CellMark, type Marks, markKey, pageKey } from "../cell-marks";
import type { Desk } from "../desk";
import { severityWords } from "./finding-list";
import { findingWords, saidByRow } from "./finding-words";
import { type FindingGroup, positionOf } from "./standing-findings";
import { tickWords } from "./ticks";

const weight: Readonly<Record<Severity, number>> = { error: 3, warning: 2, note: 1 };

/** A mark for every cell with an open finding: the shape of the heaviest, the words of all. */
export function findingMarks(desk: Pick<Desk, "notebook" | "live">, groups: readonly FindingGroup[]): Marks {
  const { notebook } = desk;
  const marks = new Map<string, CellMark & { readonly severity: Severity }>();
  for (const { findings, acceptance } of groups) {
    if (acceptance) continue;
    for (const finding of findings) {
      const at = positionOf(notebook, finding);
      if (!at) continue;
      const key = markKey(at.page, at.row, at.column);
      const known = marks.get(key);
      // A row that says its mistake itself is marked, and says it once.
      const own = saidByRow(desk, finding) ? "" : `${severityWords(finding.severity)}: ${findingWords(desk, finding)}`;
      const severity = known && weight[known.severity] > weight[finding.severity] ? known.severity : finding.severity;
      marks.set(key, {
        severity,
        kind: `finding ${severity}-finding`,
        words: [known?.words, own].filter(Boolean).join("\n"),
      });
    }
  }
  return marks;
}

/** Where a tick is drawn: at its cell, at the head of its row, or beside the name of its page. */
function placeOfTick(notebook: Notebook, place: string): string | undefined {
  const [, quoted, bare, cell] = /^(?:'(.+)'|([^!]+))!([A-Z]+\d+)$/.exec(place) ?? [];
  if (cell) {
    const page = pageByName(notebook, (quoted ?? bare ?? "").replaceAll("''", "'"));
    const from = referencesOf(`=${cell}`)[0]?.from;
    return page && from?.row !== undefined ? markKey(page.id, from.row, from.column) : undefined;
  }
  const [, name = "", key = "", option] = /^([^.@]+)\.([^@]+?)(?:@(.+))?$/.exec(place) ?? [];
  const page = pageByName(notebook, name);
  if (page && key === "*") return pageKey(page.id);
  const row = page ? rowOfKey(page, key) : -1;
  if (!page || row < 0) return undefined;
  return option === undefined
    ? markKey(page.id, row)
    : markKey(page.id, row, firstOption + optionsOf(notebook).indexOf(option));
}

export function tickMarks(notebook: Notebook, ticks: readonly Review[]): Marks {
  return new Map(
    ticks.flatMap((tick): [string, CellMark][] => {
      const key = placeOfTick(notebook, tick.place);
      return key ? [[key, { kind: tick.stale ? "tick stale-tick" : "tick", words: tickWords(tick) }]] : [];
    }),
  );
}
