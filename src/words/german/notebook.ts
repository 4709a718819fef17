import type { Catalogue } from "../catalogue";

/** Verdicts, and what the notebook refuses. */
export const notebook: Catalogue = {
  "no result": "kein Ergebnis",
  "the result is not a number": "das Ergebnis ist keine Zahl",
  "{0} is blank": "{0} ist leer",
  "less than 0.1 %": "weniger als 0,1 %",
  "holds, nothing to spare": "erfüllt, keine Reserve",
  "holds, {0} to spare": "erfüllt, {0} Reserve",
  "falls short by {0}": "verfehlt um {0}",
  "open: {0}": "offen: {0}",
  "holds, {0}": "erfüllt, {0}",
  "short by {0}": "verfehlt um {0}",
  "nothing to spare": "keine Reserve",
  "{0} to spare": "{0} Reserve",
  "by {0}": "um {0}",
};
