import { shownChoices, type UnitWish } from "../units/shown";
import type { Notebook } from "./model";
import { z } from "./zod";

/** `settings.units` of notebook.json: which units a person reads and types, and whether conductors go by gauge. */
const choice = z.object({
  mm: z.enum(shownChoices.mm).optional(),
  m: z.enum(shownChoices.m).optional(),
  N: z.enum(shownChoices.N).optional(),
  kg: z.enum(shownChoices.kg).optional(),
  degC: z.enum(shownChoices.degC).optional(),
  conductor: z.enum(["mm2", "AWG"]).optional(),
});

export type UnitChoice = UnitWish & { readonly conductor?: "mm2" | "AWG" };

/** The notebook's choice; what it does not say, or says wrongly, stays metric. */
export function unitChoice(notebook: Notebook): UnitChoice {
  const read = choice.safeParse(notebook.about.settings?.units ?? {});
  // The schema says optional where the type says absent: a field that is undefined means the same here.
  return read.success ? (read.data as UnitChoice) : {};
}

/** Keeps a choice in the notebook; shown and typed numbers change, held ones never. */
export function setUnitChoice(notebook: Notebook, units: UnitChoice): Notebook {
  if (JSON.stringify(unitChoice(notebook)) === JSON.stringify(units)) return notebook;
  return { ...notebook, about: { ...notebook.about, settings: { ...notebook.about.settings, units } } };
}
