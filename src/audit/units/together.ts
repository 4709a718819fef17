import type { Parsed } from "../../engine/parsed";
import { type Measure, silent } from "./measure";
import type { Visit } from "./visit";

/** All arguments, and all cells of ranges, in one unit, which is the result's. */
export function together(visit: Visit, name: string, parts: readonly Parsed[]): Measure {
  const items = parts.flatMap((part): readonly { measure: Measure; name: string }[] => {
    if (part.kind !== "range") return [{ measure: visit.measure(part), name: visit.words(part) }];
    return visit.around
      .cells(part.from, part.to)
      .flat()
      .map((at) => ({ measure: visit.around.cell(at), name: visit.words({ kind: "reference", at }) }));
  });
  const firstNamed = items.find(({ measure }) => measure.kind === "quantity")?.name ?? "";
  return items.reduce<Measure>(
    (all, item) => visit.judge.alike(name, all, item.measure, [firstNamed, item.name]),
    silent,
  );
}
