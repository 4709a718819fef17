import type { Catalogue } from "../catalogue";

/** What is too large, too long or cannot be followed. */
export const limits: Catalogue = {
  "the calculation took longer than {0} seconds and was stopped":
    "die Rechnung dauerte länger als {0} Sekunden und wurde angehalten",
  "This was not done: {0}. Use smaller ranges, or fewer formulas over the same cells.":
    "Das wurde nicht getan: {0}. Nehmen Sie kleinere Bereiche oder weniger Formeln über dieselben Zellen.",
  "{0} cells are meant at once (allowed {1}): use a smaller range":
    "{0} Zellen sind auf einmal gemeint (erlaubt {1}): nehmen Sie einen kleineren Bereich",
  "the text has {0} letters (allowed {1}): shorten it": "der Text hat {0} Zeichen (erlaubt {1}): kürzen Sie ihn",
  "this failed in itself ({0}): write it in another way": "das ist in sich gescheitert ({0}): schreiben Sie es anders",
  "{0} failed in itself: {1}": "{0} ist in sich gescheitert: {1}",
  "the letters of the text are {0} (allowed {1}); shorten it": "der Text hat {0} Zeichen (erlaubt {1}); kürzen Sie ihn",
  "the letters of the formula are {0} (allowed {1}); do it in several cells":
    "die Formel hat {0} Zeichen (erlaubt {1}); verteilen Sie sie auf mehrere Zellen",
  "the brackets inside one another are {0} (allowed {1}); do it in several cells":
    "{0} Klammern stehen ineinander (erlaubt {1}); verteilen Sie die Formel auf mehrere Zellen",
  "the operators of the formula are {0} (allowed {1}); do it in several cells":
    "die Formel hat {0} Rechenzeichen (erlaubt {1}); verteilen Sie sie auf mehrere Zellen",
  "{0} would have {1} rows and {2} columns (allowed {3} and {4}, and {5} cells).":
    "{0} hätte {1} Zeilen und {2} Spalten (erlaubt {3} und {4} sowie {5} Zellen).",
  '{0} "{1} …" has {2} letters (allowed {3}).': "{0} „{1} …“ hat {2} Zeichen (erlaubt {3}).",
  "The notes of {0} have {1} letters (allowed {2}); shorten them.":
    "Die Notizen von {0} haben {1} Zeichen (erlaubt {2}); kürzen Sie sie.",
  "page {0} is not there": "die Seite {0} ist nicht da",
  "entry {0}: {1}": "Eintrag {0}: {1}",
  "entry {0} is missing": "der Eintrag {0} fehlt",
  "there is nothing to undo": "es gibt nichts rückgängig zu machen",
  "there is nothing to redo": "es gibt nichts zu wiederholen",
  "rows {0} to {1} are not there": "die Zeilen {0} bis {1} sind nicht da",
  "row {0} is not there": "die Zeile {0} ist nicht da",
  '"{0}" is damaged in this browser\'s database: open one of its named versions or a file.':
    "„{0}“ ist in der Datenbank dieses Browsers beschädigt: Öffnen Sie eine seiner benannten Fassungen oder eine Datei.",
};
