/** Sizes in mm, upright: A4 and A3 by ISO 216, Letter 8.5 by 11 inches. */
export const papers = {
  A4: { width: 210, height: 297 },
  A3: { width: 297, height: 420 },
  Letter: { width: 215.9, height: 279.4 },
} as const;

export type Paper = keyof typeof papers;

/** White rim that printers cannot reach, mm. */
export const rim = 10;
/** Strip at the foot of every sheet for the check bar and the words, mm. */
export const strip = 18;
/** How far neighbouring sheets lie over one another, mm. */
export const overlap = 10;
