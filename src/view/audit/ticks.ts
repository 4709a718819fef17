import { placesOf, type Review, type ReviewPlace, review, unreview } from "../../audit/review";
import type { Notebook } from "../../notebook/model";
import { say } from "../../words/say";
import type { Desk } from "../desk";
import { askName, today } from "../dialogs/ask-name";
import type { Said } from "./auditor";

/** The ticks of a notebook: as the report has them, and those made since, which stand until the next report. */
export function ticksOf(notebook: Notebook, said: Said | undefined): Review[] {
  const reported = new Map(said?.report.reviews.map((one) => [one.place, one]));
  return Object.entries(notebook.about.reviews ?? {}).map(([place, entry]) => {
    const known = said?.of.about.reviews?.[place] === entry ? reported.get(place) : undefined;
    return known ?? { place, who: entry.who, when: entry.when, stale: false, lost: false };
  });
}

/** `2026-11-25`, as the report writes it. */
export const tickWords = ({ who, when, stale, lost }: Review): string =>
  lost
    ? say`ticked by ${who} on ${when}, no longer there`
    : stale
      ? say`ticked by ${who} on ${when}, stale: something behind it has changed`
      : say`reviewed by ${who} on ${when}`;

/** Ticks a place as reviewed, as one step; asks for the name when it is not known yet. */
export async function tick(desk: Desk, place: ReviewPlace): Promise<void> {
  const who = await askName();
  if (who === undefined) return;
  desk.apply(say`review of ${place}`, (notebook) => review(notebook, place, who, today()));
}

/** Ticks the selected cell, or its row. */
export async function tickSelected(desk: Desk, what: "cell" | "row"): Promise<void> {
  const { page, block, notebook } = desk;
  const place = placesOf(notebook, { page: page.id, ...block.from })?.[what];
  if (place === undefined) desk.say(say`The row has no key by which it could be ticked; tick its cells.`, "refused");
  else await tick(desk, place);
}

/** Takes a tick back, as one step. */
export function untick(desk: Desk, place: ReviewPlace): void {
  desk.apply(say`tick of ${place} taken back`, (notebook) => unreview(notebook, place));
}
