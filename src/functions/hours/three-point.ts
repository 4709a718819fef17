import type { NumberArgument } from "../../formula/arguments";

// Arguments of a three-point estimate, so that limits and words are the same in every function.

const hours = { unit: "h", min: 0, max: 1e6 } as const;

export const low = { ...hours, about: "if all goes well" } as const satisfies NumberArgument;
export const likely = { ...hours, about: "most likely" } as const satisfies NumberArgument;
export const high = { ...hours, about: "if all goes badly" } as const satisfies NumberArgument;
export const mean = { ...hours, about: "mean of the sum" } as const satisfies NumberArgument;
export const spread = { ...hours, about: "standard deviation of the sum" } as const satisfies NumberArgument;

/** The three numbers must rise. */
export const inOrder = {
  kind: "require",
  holds: "low <= likely and likely <= high",
  says: "likely: {likely} h does not lie between low {low} h and high {high} h",
} as const;
