import type { Judged } from "./judge";

export interface Tally {
  readonly kind: string;
  readonly spread: string;
  readonly made: number;
  /** So many of them can be told in principle. */
  readonly evident: number;
  readonly found: number;
  /** Found although nothing was thought to give them away. */
  readonly foundUnseen: number;
  /** Told by their own findings or as a difference from the shipped notebook. */
  readonly foundWithShipped: number;
  readonly findings: number;
  readonly inItsRow: number;
  readonly elsewhere: number;
}

const isEvident = ({ evidence }: Judged): boolean => "seenBy" in evidence;

function sumOf(kind: string, spread: string, judged: readonly Judged[]): Tally {
  const count = (wanted: (one: Judged) => boolean) => judged.filter(wanted).length;
  return {
    kind,
    spread,
    made: judged.length,
    evident: count(isEvident),
    found: count((one) => isEvident(one) && one.found),
    foundUnseen: count((one) => !isEvident(one) && one.found),
    foundWithShipped: count((one) => one.found || one.foundAsShipped),
    findings: judged.reduce((sum, { findings }) => sum + findings.length, 0),
    inItsRow: judged.reduce((sum, { inItsRow }) => sum + inItsRow, 0),
    elsewhere: judged.reduce((sum, { elsewhere }) => sum + elsewhere.length, 0),
  };
}

/** Recall and precision kind by kind, and of all together in the last line. */
export function tallyOf(judged: readonly Judged[]): Tally[] {
  const groups = new Map<string, Judged[]>();
  for (const one of judged) {
    const key = `${one.fault.kind}|${one.fault.spread}`;
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  const kinds = [...groups.values()].map((group) =>
    sumOf(group[0]?.fault.kind ?? "", group[0]?.fault.spread ?? "", group),
  );
  return [...kinds, sumOf("all", "", judged)];
}

/** Why mistakes cannot be told, with how many there are of each. */
export function unseenReasons(judged: readonly Judged[]): ReadonlyMap<string, number> {
  const reasons = new Map<string, number>();
  for (const { evidence, fault } of judged) {
    if (!("unseen" in evidence)) continue;
    const reason = `${fault.kind}: ${evidence.unseen}`;
    reasons.set(reason, (reasons.get(reason) ?? 0) + 1);
  }
  return reasons;
}

/** A mistake as one looks it up. */
export const judgedWords = ({ fault, where, evidence }: Judged): string =>
  `${fault.kind}, ${fault.spread}: ${where} ${fault.cells[0]?.text || "blank"} (${"seenBy" in evidence ? evidence.seenBy : evidence.unseen})`;
