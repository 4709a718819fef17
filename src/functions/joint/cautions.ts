// The usual cautions of laminate work; they stand beside the number that raises the hazard.

const decides = "local codes and licensed practice decide";

export const glassDust =
  "Grinding glass throws fine dust: dust extraction, a fitted respirator, goggles, covered skin and a tent " +
  `(usual rules, named from memory: OSHA 29 CFR 1910.134 and 1915 Subpart I, UK COSHH 2002); ${decides}.`;

export const resinVapour =
  "Polyester and vinyl ester give off styrene (US shipyard limit 100 ppm over 8 h, 29 CFR 1915.1000; in the UK EH40, " +
  `from memory); epoxy and its hardener cause lasting skin allergy: ventilate, gloves, no solvent on skin; ${decides}.`;

export const resinHeat =
  "A full pot heats itself and can smoke or burn: small shallow pots, a metal tray outdoors for what sets, nothing " +
  `warm into a bin (usual rules, named from memory: UK DSEAR 2002, OSHA 29 CFR 1915 Subpart P); ${decides}.`;

export const hardener =
  "Amine hardener burns skin and peroxide burns eyes: gloves, goggles and an eyewash within reach, never " +
  "peroxide straight into accelerator (usual rules, named from memory: UK COSHH 2002, OSHA 29 CFR 1910.151 and " +
  `1910.1200); ${decides}.`;
