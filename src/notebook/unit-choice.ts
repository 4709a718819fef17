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

const metric: UnitChoice = {};

/** Every cell that is drawn asks for it: what a setting says is read once. */
const known = new WeakMap<object, UnitChoice>();

/** The notebook's choice; what it does not say, or says wrongly, stays metric. */
export function unitChoice(notebook: Notebook): UnitChoice {
  const setting = notebook.about.settings?.units;
  if (typeof setting !== "object" || setting === null) return metric;
  const before = known.get(setting);
  if (before) return before;
  const read = choice.safeParse(setting);
  // The schema says optional where the type says absent: a field that is undefined means the same here.
  const now = read.success ? (read.data as UnitChoice) : metric;
  known.set(setting, now);
  return now;
}

/** Keeps a choice in the notebook; shown and typed numbers change, held ones never. */
export function setUnitChoice(notebook: Notebook, units: UnitChoice): Notebook {
  if (JSON.stringify(unitChoice(notebook)) === JSON.stringify(units)) return notebook;
  return { ...notebook, about: { ...notebook.about, settings: { ...notebook.about.settings, units } } };
}
