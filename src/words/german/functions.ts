import type { Catalogue } from "../catalogue";

/** Unfolding a function, and functions of the notebook's own. */
export const functions: Catalogue = {
  "Unfold {0} into rows": "{0} in Zeilen auffalten",
  "Unfold into rows": "In Zeilen auffalten",
  "Its steps as rows of plain formulas (Ctrl+Alt+U)": "Die Schritte als Zeilen mit einfachen Formeln (Strg+Alt+U)",
  "This cell calls no named function that could be unfolded; choose one that does.":
    "Diese Zelle ruft keine benannte Funktion auf, die sich auffalten ließe; wählen Sie eine, die es tut.",
  "{0} unfolded": "{0} aufgefaltet",
  "{0} is unfolded into {1}, {2} to {3}; undo brings it back.":
    "{0} ist in {1} aufgefaltet, {2} bis {3}; Rückgängig bringt den Aufruf zurück.",
  "Copy {0} under another name": "{0} unter anderem Namen abschreiben",
  "A function of your own": "Eine eigene Funktion",
  "A function of your own …": "Eine eigene Funktion …",
  "Copy under another name …": "Unter anderem Namen abschreiben …",
  "It is written down as rows on a page of this notebook: arguments, constants, steps, the result, examples. Every row can be changed, and cells call it by its name.":
    "Sie wird in Zeilen auf eine Seite dieser Mappe geschrieben: Argumente, Konstanten, Schritte, das Ergebnis, Beispiele. Jede Zeile lässt sich ändern, und Zellen rufen sie mit ihrem Namen auf.",
  "Write it down": "Aufschreiben",
  "{0} written down": "{0} aufgeschrieben",
  "{0} can be called in every cell. Change its rows as you need; undo takes it back.":
    "{0} lässt sich in jeder Zelle aufrufen. Ändern Sie die Zeilen, wie Sie es brauchen; Rückgängig nimmt sie zurück.",
  "the notebook's own": "eigene Funktion der Mappe",
  "The notebook's own": "Eigene Funktionen der Mappe",
  "The notebook's own function, page {0}": "Eigene Funktion der Mappe, Seite {0}",
  "The notebook's own function, defined on page {0}": "Eigene Funktion der Mappe, festgelegt auf Seite {0}",
  "None; add a row example to its page.": "Keines; fügen Sie auf der Seite eine Zeile example hinzu.",
};
