import type { Constant } from "../../formula/definition";
import { astmB258 } from "../../tables/electrical-sources";

/** The rule of ASTM B258: 39 equal ratios from 36 AWG, 0.005 inch, to 4/0, 0.46 inch, which is 92 times as thick. */

export const smallestDiameter: Constant = { value: 0.127, unit: "mm", about: "diameter of 36 AWG", source: astmB258 };

export const smallestNumber: Constant = { value: 36, unit: "1", about: "number of that gauge", source: astmB258 };

export const gaugeRatio: Constant = { value: 92, unit: "1", about: "4/0 to 36 AWG in diameter", source: astmB258 };

export const gaugesBetween: Constant = { value: 39, unit: "1", about: "steps from 36 AWG to 4/0", source: astmB258 };
