/** Papers that every office printer takes. */
export const sheetSizes = ["A4", "Letter"] as const;

export type SheetSize = (typeof sheetSizes)[number];

export const isSheetSize = (name: string): name is SheetSize => sheetSizes.some((size) => size === name);
