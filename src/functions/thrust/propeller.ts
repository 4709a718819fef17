import type { NumberArgument } from "../../formula/arguments";

// Arguments that the functions of this folder share.

export const power = {
  unit: "W",
  about: "power at the propeller's shaft",
  min: 0,
  aboveMin: true,
  max: 2e6,
} as const satisfies NumberArgument;

export const bore = {
  unit: "mm",
  about: "inner diameter of the tunnel",
  min: 50,
  max: 2500,
} as const satisfies NumberArgument;

export const hub = {
  unit: "1",
  about: "diameter of the hub over that of the tunnel",
  min: 0,
  max: 0.6,
  otherwise: 0,
} as const satisfies NumberArgument;

export const thrust = {
  unit: "N",
  about: "side force of the thruster",
  min: 0,
  max: 1e6,
} as const satisfies NumberArgument;

/** Somebody may be near the tunnel when it runs. */
export const jetCaution =
  "Keep swimmers, lines and loose gear away from both ends of the tunnel; before anybody works at it the supply is isolated and locked off, as a propeller can start by itself. Local codes and licensed practice decide.";
