/** Arguments that every function of a conductor run takes in the same words and limits. */

export const current = { unit: "A", about: "current while running", min: 0, max: 5000 } as const;

export const run = { unit: "m", about: "length of conductor out and back", min: 0, max: 1000 } as const;

export const nominalArea = { unit: "mm2", about: "nominal size of IEC 60228", min: 0, aboveMin: true } as const;

export const temperature = { unit: "degC", about: "of the conductor", min: -40, max: 150, otherwise: 20 } as const;

export const parallel = {
  unit: "1",
  about: "equal conductors side by side",
  whole: true,
  min: 1,
  max: 8,
  otherwise: 1,
} as const;
