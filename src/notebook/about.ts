import { z } from "./zod";

/** What `notebook.json` holds. Fields that are not known here are kept as they are. */
export const currentVersion = 1;

const pageEntry = z.looseObject({ name: z.string().min(1), file: z.string().min(1) });

const rowEntry = z.looseObject({
  /** The values to choose from, for an input that is picked from a list. */
  choices: z.array(z.union([z.string(), z.number()])).optional(),
  /** Plausible limits; a value outside them is questioned, not refused. */
  low: z.number().optional(),
  likely: z.number().optional(),
  high: z.number().optional(),
  /** Digits after the point on the screen. */
  digits: z.number().int().min(0).max(15).optional(),
  /** What kind of thing is measured, where the unit alone does not tell: a conductor may be shown by its gauge. */
  measure: z.literal("conductor").optional(),
});

const review = z.looseObject({
  who: z.string(),
  when: z.string(),
  hash: z.string(),
});

/** A finding of the audit that somebody lets stand. */
const accepted = z.looseObject({
  rule: z.string(),
  /** `Supply.drop@Cruiser`, `Supply.drop` or `Free!B3`. */
  at: z.string(),
  /** The finding as it was read; another sentence is another finding. */
  message: z.string(),
  reason: z.string(),
  who: z.string(),
  when: z.string(),
});

export const aboutSchema = z.looseObject({
  version: z.literal(currentVersion),
  title: z.string().min(1),
  /** Folder of the worked notebook that this one was begun with: the audit tells what was adapted since. */
  shipped: z.string().optional(),
  scenario: z.string().optional(),
  revision: z.string().optional(),
  date: z.string().optional(),
  pages: z.array(pageEntry).min(1),
  /** Markdown by page name. */
  notes: z.record(z.string(), z.string()).optional(),
  /** By address: `Supply.run`. */
  rows: z.record(z.string(), rowEntry).optional(),
  reviews: z.record(z.string(), review).optional(),
  accepted: z.array(accepted).optional(),
  settings: z.record(z.string(), z.unknown()).optional(),
});

export type About = z.infer<typeof aboutSchema>;
export type Accepted = z.infer<typeof accepted>;
export type RowEntry = z.infer<typeof rowEntry>;
