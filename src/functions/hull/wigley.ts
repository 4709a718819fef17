import type { Source } from "../../formula/source";

/** A hull whose surface is known everywhere, used to prove readings between offsets. */
export const wigley: Source = {
  evidence: "identity",
  title: "Wigley's parabolic hull, y = B/2·(1 − (2x/L)²)·(1 − (z/T)²)",
  note: "L 12 m, B 3.6 m, T 1.2 m; the numbers follow from the formula",
};

/** Its half-breadth in mm; `x` forward from midship, `z` up from the waterline, mm. */
const breadth = (x: number, z: number): number => 1800 * (1 - (x / 6000) ** 2) * (1 - (z / 1200) ** 2);

const stations = [4600, 4700, 4800, 4900, 5000];
const heights = [-700, -600, -500, -400, -300];

/** Offsets of five stations and five heights, 100 mm apart, as a person would measure them. */
export const wigleyGrid = { stations, heights, offsets: heights.flatMap((z) => stations.map((x) => breadth(x, z))) };

/** The tunnel 1.2 m behind the stem and 0.5 m under water. */
export const wigleyAxis = { station: 4800, height: -500 };
