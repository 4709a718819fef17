import type { Source } from "../formula/source";

/** Texts on flow through openings and pipes. */
export const crane: Source = {
  evidence: "published",
  title: "Crane, Technical Paper 410, Flow of fluids; the same points in Munson, Fundamentals of Fluid Mechanics",
  clause: "Munson fig. 8.24",
  edition: "TP-410 2009",
  note: "read second hand, in an open library of fluid mechanics that cites both",
};

export const colebrook: Source = {
  evidence: "published",
  title: "Colebrook, Turbulent flow in pipes, J. Inst. Civ. Eng. 11",
  edition: "1939",
};

export const moodyRange: Source = {
  evidence: "memory",
  title: "Moody, Friction factors for pipe flow, chart",
  edition: "1944",
  note: "the chart ends at a roughness of 1/20 of the diameter",
};

export const ittcWater: Source = {
  evidence: "published",
  title: "ITTC 7.5-02-01-03, Density and viscosity of water",
  clause: "sea water, 35.16504 g/kg",
  edition: "2011",
};

export const idelchikOblique: Source = {
  evidence: "published",
  title: "Idelchik, Handbook of Hydraulic Resistance, sharp entry at an angle to the wall",
  edition: "1966",
  note: "read second hand, in an open library of fluid mechanics that cites it",
};

export const kirschmer: Source = {
  evidence: "published",
  title: "Kirschmer, head loss of bar racks",
  edition: "1926",
  note: "formula only; the bar factors are from memory",
};

export const kirschmerBars: Source = {
  evidence: "memory",
  title: "Kirschmer, factors of bar shape",
  edition: "1926",
};

export const blevinsGrill: Source = {
  evidence: "published",
  title: "Blevins, Applied Fluid Dynamics Handbook, square-edged grill",
  note: "read second hand, in an open library of fluid mechanics that cites it",
};

export const standardGravity: Source = {
  evidence: "published",
  title: "3rd General Conference on Weights and Measures, standard acceleration of gravity",
  edition: "1901",
};

export const ventilationCurve: Source = {
  evidence: "memory",
  title: "Minsaas, Thon and Kauczynski, thrust of a propeller near the surface",
  edition: "about 1985",
  note: "no public copy that prints the curve was found",
};

export const smallCraftRules: Source = {
  evidence: "published",
  title: "Lloyd's Register, Rules for Special Service Craft",
  clause: "Pt 3 Ch 3 s4.3-4.4",
  edition: "July 2022",
};
