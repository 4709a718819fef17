import type { Source } from "../formula/source";

/** Texts on wind, current, sea water and air. */
export const standardAtmosphere: Source = {
  evidence: "published",
  title: "ICAO Doc 7488, Manual of the standard atmosphere; ISO 2533",
  clause: "dry air, 15 °C, 101325 Pa; R 287.05287 J/(kg K)",
};

export const blendermann: Source = {
  evidence: "published",
  title: "Blendermann, Parameter identification of wind loads on ships, J. Wind Eng. Ind. Aerodyn. 51:339-351",
  edition: "1994",
  note: "read second hand, in an open toolbox of marine systems that cites it",
};

export const windProfile: Source = {
  evidence: "published",
  title: "46 CFR 28.575, severe wind and roll, fishing vessels",
  clause: "(b), metric line",
};

export const beaufortScale: Source = {
  evidence: "published",
  title: "WMO-No. 306, Manual on Codes; WMO-No. 8, Guide to Meteorological Instruments",
  clause: "Beaufort scale",
  note: "read second hand, in three pages that agree",
};

export const hoerner: Source = {
  evidence: "published",
  title: "Hoerner's cross-flow drag of ship sections, as drawn by Leite and others",
  edition: "1998",
  note: "points read off the curve by an open toolbox of marine systems",
};

export const mooringDesign: Source = {
  evidence: "published",
  title: "UFC 4-159-03, Design: Moorings",
  clause: "equations 9 to 13, table 4-6",
  edition: "3 October 2005",
};

export const seawaterState: Source = {
  evidence: "published",
  title: "UNESCO Technical Papers in Marine Science 36 and 44, EOS-80 at one atmosphere",
  edition: "1981 and 1983",
};
