import type { Catalogue } from "../catalogue";

/** The terminal. */
export const terminal: Catalogue = {
  "error / errors": { one: "{0} Fehler", other: "{0} Fehler" },
  "warning / warnings": { one: "{0} Warnung", other: "{0} Warnungen" },
  "note / notes": { one: "{0} Hinweis", other: "{0} Hinweise" },
};
