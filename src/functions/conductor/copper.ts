import type { Constant } from "../../formula/definition";
import { identity } from "../../formula/source";
import { copperHeat, iec60028, iec60949, its90 } from "../../tables/electrical-sources";

/** Figures for copper that several functions of this family share. */

export const resistivity: Constant = {
  value: 1 / 58,
  unit: "ohm mm2/m",
  about: "annealed copper at 20 °C",
  source: iec60028,
};

export const alpha: Constant = {
  value: 0.00393,
  unit: "1/K",
  about: "rise of copper's resistance for each kelvin, as a share of that at 20 °C",
  source: iec60028,
};

export const referenceTemperature: Constant = {
  value: 20,
  unit: "degC",
  about: "temperature that resistances are stated at",
  source: iec60028,
};

export const zeroResistance: Constant = {
  value: -234.5,
  unit: "degC",
  about: "where the straight line of copper's resistance meets zero",
  source: iec60949,
};

export const adiabaticConstant: Constant = {
  value: 226,
  unit: "A s0.5/mm2",
  about: "copper, from its heat and resistivity",
  source: iec60949,
};

export const heatCapacity: Constant = {
  value: 3.45,
  unit: "J/(m K mm2)",
  about: "heat of a metre of copper for each mm2 and kelvin",
  source: copperHeat,
};

export const meltingPoint: Constant = { value: 1084.62, unit: "degC", about: "copper melts", source: its90 };

export const metresPerKm: Constant = { value: 1000, unit: "m/km", about: "metres in a km", source: identity("SI") };
