import type { LayoutName } from "./layout-names";

/** Papers that every office printer takes. */
export const sheetSizes = ["A4", "Letter"] as const;

/** Templates are larger than any sheet; a larger paper has fewer joins in it. */
const templateSizes = ["A4", "A3", "Letter"] as const;

export type SheetSize = (typeof templateSizes)[number];

/** The papers that a layout is laid out for. */
export const sizesOf = (layout: LayoutName): readonly SheetSize[] =>
  layout === "templates" ? templateSizes : sheetSizes;
