import type { Source } from "../formula/source";

/** Texts that the tables and functions for conductors, batteries and motors rest on. */

export const iec60028: Source = {
  evidence: "published",
  title: "IEC 60028, International standard of resistance for copper",
  edition: "1925",
};

export const astmB258: Source = {
  evidence: "published",
  title: "ASTM B258, Standard nominal diameters of AWG sizes of solid round wires",
};

export const cfr183Table5: Source = {
  evidence: "published",
  title: "33 CFR 183.425",
  clause: "table 5",
  note: "binds boats with gasoline engines, a reference for others; base ambient 30 °C",
};

/** The same table, for the columns that were read in a single public copy. */
export const cfr183Table5OneCopy: Source = { ...cfr183Table5, note: "column read in one public copy only" };

export const cfr183EngineSpace: Source = {
  evidence: "published",
  title: "33 CFR 183.425",
  clause: "table 5, note 1",
  note: "engine space at 50 °C; factor 0.85 for 105 °C insulation",
};

export const cfr183EngineSpaceOthers: Source = {
  evidence: "memory",
  title: "33 CFR 183.425",
  clause: "table 5, note 1",
  note: "engine-space factors for insulation other than 105 °C",
};

export const cfr183Protection: Source = {
  evidence: "published",
  title: "33 CFR 183.455",
  clause: "(a) to (d)",
  note: "below 50 V a fuse may be rated up to 150 % of the current in table 5; other rules stop at 100 %",
};

export const absShipCable: Source = {
  evidence: "published",
  title: "American Bureau of Shipping, Rules for Steel Vessels",
  clause: "4-8-3, table 6",
  note: "single core, 45 °C ambient",
};

export const iec60949: Source = {
  evidence: "published",
  title: "IEC 60949, Thermally permissible short-circuit currents taking non-adiabatic heating into account",
  edition: "1988",
};

export const iec60364Protective: Source = {
  evidence: "published",
  title: "IEC 60364-5-54, Low-voltage installations: earthing arrangements and protective conductors",
  clause: "annex A, factor k",
  note: "the same values stand in BS 7671",
};

export const its90: Source = {
  evidence: "published",
  title: "International Temperature Scale of 1990",
  clause: "table 1, freezing point of copper",
};

export const copperHeat: Source = {
  evidence: "memory",
  title: "IEC 60949",
  clause: "volumetric heat of copper",
  note: "3.45 J/(K cm3); it reproduces the constant 226 of the same text",
};

export const saeJ537: Source = {
  evidence: "published",
  title: "SAE J537, Storage batteries",
  clause: "cold cranking: 7.2 V after 30 s at -18 °C for a 12 V battery",
};

export const peukert: Source = {
  evidence: "published",
  title: "W. Peukert, Elektrotechnische Zeitschrift, 1897",
  note: "brought to the rated time of the capacity",
};

export const batteryAir: Source = {
  evidence: "published",
  title: "EN 50272-2 / IEC 62485-2, Safety requirements for secondary batteries: stationary batteries",
  clause: "ventilation of battery rooms",
};

export const nec240: Source = {
  evidence: "published",
  title: "NFPA 70, National Electrical Code",
  clause: "240.6(A), with its additional ratings for fuses",
};

export const r10Ratings: Source = {
  evidence: "memory",
  title: "IEC 60269 and ISO 3, series R10",
  note: "the same series stands in several public lists of device ratings; the standard was not read",
};

export const iec61238: Source = {
  evidence: "published",
  title: "IEC 61238-1, Compression and mechanical connectors for power cables",
  clause: "pull test: 60 N per mm2 of copper, at most 20 kN",
};

export const ul486a: Source = {
  evidence: "published",
  title: "UL 486A, Wire connectors",
  clause: "pull-out, held 1 min",
};

export const dnvAnodes: Source = {
  evidence: "memory",
  title: "DNV-RP-B401, Cathodic protection design",
  note: "780 Ah/kg for zinc is printed alike where the editions 2005 to 2021 are quoted",
};
