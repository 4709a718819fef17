import { isFormula } from "../../../src/engine/content";
import { type CellText, setCells } from "../../../src/notebook/edit-cells";
import type { LiveNotebook } from "../../../src/notebook/live";
import type { Notebook } from "../../../src/notebook/model";
import { Refusal } from "../../../src/notebook/refusal";
import { pick } from "../../formula/random-expression";
import { evidenceOf, neighboursAgree } from "./evidence";
import { type Fault, inAllOptions, placesOf, type Random, written } from "./fault";
import { blankInput, type MakeFault, numberInOtherUnit, typedAsText, typedOver, unitText } from "./input-faults";
import type { MakeSlip } from "./slip";
import { slips } from "./slips";
import { staleReview } from "./stale-reviews";

/** A slip in the formula of one option, or in those of all options alike. */
function inFormula(live: LiveNotebook, slip: MakeSlip, everywhere: boolean): MakeFault {
  const { notebook } = live;
  const formulas = placesOf(notebook, ({ text }) => isFormula(text));
  return (random) => {
    const place = pick(random, formulas);
    const made = slip(random, live, place);
    if (!made || made.text === place.text) return undefined;
    const told = evidenceOf(notebook, place, made.trace);
    if (everywhere) return { cells: inAllOptions(notebook, place, made.text), evidence: told };
    const agree = neighboursAgree(notebook, place);
    return {
      cells: [written(place, made.text)],
      evidence: agree ? { seenBy: "the formulas of the other options" } : told,
    };
  };
}

/** Whether the notebook takes the mistake at all: a value that is no choice of its row is refused when it is typed. */
function isTaken(notebook: Notebook, cells: readonly CellText[]): boolean {
  try {
    return cells.length > 0 && setCells(notebook, cells) !== notebook;
  } catch (cause) {
    if (cause instanceof Refusal) return false;
    throw cause;
  }
}

type Kind = readonly [kind: string, spread: Fault["spread"], make: MakeFault];

function kindsOf(live: LiveNotebook): readonly Kind[] {
  const { notebook } = live;
  const both = (kind: string, make: (everywhere: boolean) => MakeFault): Kind[] => [
    [kind, "one option", make(false)],
    [kind, "all options", make(true)],
  ];
  return [
    ...Object.entries(slips).flatMap(([kind, slip]) => both(kind, (everywhere) => inFormula(live, slip, everywhere))),
    ...both("result typed over", (everywhere) => typedOver(live, everywhere)),
    ...both("input left blank", (everywhere) => blankInput(notebook, everywhere)),
    ...both("number typed in the other unit", (everywhere) => numberInOtherUnit(notebook, everywhere)),
    ["unit of a row slipped", "all options", unitText(notebook)],
    ["number typed as text", "one option", typedAsText(notebook)],
    ["review gone stale", "one option", staleReview(notebook)],
  ];
}

/**
 * So many single mistakes of every kind in a calculated notebook; the same ones for the same random numbers. Of
 * kinds for which a notebook has few places there are fewer.
 */
export function seededFaults(random: Random, live: LiveNotebook, each: number): Fault[] {
  return kindsOf(live).flatMap(([kind, spread, make]) => {
    const made = new Map<string, Fault>();
    for (let tries = 0; made.size < each && tries < each * 40; tries++) {
      const fault = make(random);
      if (fault && isTaken(live.notebook, fault.cells))
        made.set(JSON.stringify([fault.cells, fault.ticked]), { kind, spread, ...fault });
    }
    return [...made.values()];
  });
}
