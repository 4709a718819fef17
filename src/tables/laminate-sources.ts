import { commonPractice, type Source } from "../formula/source";

/** Texts on fibre-reinforced laminates, bonding and resin. */
export const isoPlyThickness: Source = {
  evidence: "published",
  title: "ISO 12215-5, Small craft, hull construction and scantlings",
  clause: "Annex C, equation C.1",
  edition: "2008",
  note: "as read in a public implementation, not in the standard; a 2019 edition replaces it",
};

export const isoFibreFraction: Source = {
  ...isoPlyThickness,
  clause: "Annex C, table C.2",
};

export const isoOtherFibres: Source = {
  ...isoPlyThickness,
  clause: "Annex C, equations C.3 and C.5",
};

export const backingPatch: Source = {
  evidence: "published",
  title: "US Army TM 5-3820-256-24-5, glass-fibre repair",
  clause: "page 10",
  note: "land vehicle panels, polyester",
};

export const compositesPrimer: Source = {
  evidence: "memory",
  title: "Kaw, Mechanics of Composite Materials",
  clause: "chapter 3, first glass and epoxy example",
};

export const amineCure: Source = {
  evidence: "published",
  title: "J. Appl. Polym. Sci. 56(9), cure of epoxy with diamines",
  clause: "pages 1029-1037",
  edition: "1995",
  note: "activation energies of 44 to 57 kJ/mol give 1.81 to 2.16 per 10 °C near 25 °C; doubling is the round rule",
};

export const portionShare = commonPractice("Lay up a pot within 0.6 of its life, and mix no more than 0.5 kg at once");

export const bevelRatio = commonPractice("12:1 below water, seen on hull repairs");
