import type { Source } from "../formula/source";

/** Texts on estimates with a spread. */
export const pert: Source = {
  evidence: "published",
  title: "Taylor, Introduction to Management Science",
  clause: "PERT with three time estimates, solved example",
  note: "path 5, 8, 17; 3, 5, 7; 4, 6, 8; 3, 4, 5: mean 24, variance 5",
};

export const wichura: Source = {
  evidence: "published",
  title: "Wichura, Algorithm AS 241: The percentage points of the normal distribution, Applied Statistics 37",
  clause: "PPND16, pages 477-484",
  edition: "1988",
  note: "coefficients as two public copies print them alike, rounded to double precision",
};

export const commonCause: Source = {
  evidence: "memory",
  title: "0.2 is the lower end of what cost agencies take where nothing is known",
};
