import type { Catalogue } from "../catalogue";

/** How the work is kept, in the browser and on the disk, and what is said when something goes wrong. */
export const keeping: Catalogue = {
  "On the disk": "Auf der Platte",
  "This browser writes no files by itself: Save hands the notebook out as a download, Open … takes one in.":
    "Dieser Browser schreibt selbst keine Dateien: Speichern gibt das Heft als Download aus, Öffnen … nimmt eines herein.",
  "Save writes to {0}.": "Speichern schreibt in {0}.",
  "Open a folder …": "Ordner öffnen …",
  "Save to a folder …": "In einen Ordner speichern …",
  "Save to a file …": "In eine Datei speichern …",
  "the folder {0}": "den Ordner {0}",
  "the file {0}": "die Datei {0}",
  'The folder {0} holds the notebook "{1}". Its files are replaced.':
    'Der Ordner {0} enthält das Heft "{1}". Seine Dateien werden ersetzt.',
  "The folder {0} holds a notebook that cannot be read. Its files are replaced.":
    "Der Ordner {0} enthält ein Heft, das nicht gelesen werden kann. Seine Dateien werden ersetzt.",
  "In the folder {0} somebody else has changed {1} since. Saving replaces that.":
    "Im Ordner {0} hat inzwischen jemand anders {1} geändert. Speichern ersetzt das.",
  "{0} is open; Save writes to the folder {1}.": "{0} ist offen; Speichern schreibt in den Ordner {1}.",
  "Saved to the folder {0}: {1} of {2} had changed.": "In den Ordner {0} gespeichert: {1} von {2} war geändert.",
  "Taken away, of former pages: {0}.": "Entfernt, von früheren Seiten: {0}.",
  "Saved to {0}.": "In {0} gespeichert.",
  "{0} could not be read or written ({1}): save to another place. The open notebook is unchanged.":
    "{0} konnte nicht gelesen oder geschrieben werden ({1}): Speichern Sie an einem anderen Ort. Das offene Heft ist unverändert.",
  "Replace these files?": "Diese Dateien ersetzen?",
  "Leave them as they are": "So lassen, wie sie sind",
  "Replace them": "Ersetzen",
  "Save to a file": "In eine Datei speichern",
  "Take it over": "Übernehmen",
  "Show what was changed": "Zeigen, was geändert wurde",
  "Try again": "Noch einmal versuchen",
  "A newer version of this program is ready. It waits until it is taken.":
    "Eine neuere Fassung dieses Programms liegt bereit. Sie wartet, bis sie genommen wird.",
  "Take the newer version": "Neuere Fassung nehmen",
  "Another window has taken a newer version of this program, and parts of this one may be missing: load the page again.":
    "Ein anderes Fenster hat eine neuere Fassung dieses Programms genommen, und Teile von dieser können fehlen: Laden Sie die Seite neu.",
  "Load the page again": "Seite neu laden",
  "The newer version has to wait: the latest changes are in this window only. Save to a file, then take it.":
    "Die neuere Fassung muss warten: Die letzten Änderungen sind nur in diesem Fenster. Speichern Sie in eine Datei, dann nehmen Sie sie.",
  "Everything is kept in this browser again.": "Alles wird wieder in diesem Browser behalten.",
  "In this window only": "Nur in diesem Fenster",
  "To be read only": "Nur zu lesen",
  "The report": "Der Bericht",
  "Something went wrong in this program": "In diesem Programm ist etwas schiefgegangen",
  "Report for those who can mend it": "Bericht für die, die es beheben können",
  "It goes nowhere by itself. Read it before you hand it on.":
    "Er geht von selbst nirgendwohin. Lesen Sie ihn, bevor Sie ihn weitergeben.",
  "A part of the program could not be loaded: there may be no network, or a newer version has taken its place. Load the page again.":
    "Ein Teil des Programms konnte nicht geladen werden: Vielleicht fehlt das Netz, oder eine neuere Fassung steht an seiner Stelle. Laden Sie die Seite neu.",
  "What the program says of it: {0}": "Was das Programm davon sagt: {0}",
  "Save the notebook to a file": "Heft in eine Datei speichern",
  "Go on": "Weiter",
  "Save the report": "Bericht speichern",
  "Copy it": "Kopieren",
  "The notebook could not be opened; another one was opened in its place.":
    "Das Heft konnte nicht geöffnet werden; an seiner Stelle ist ein anderes offen.",
  "Everything up to the last change is kept in this browser, and opens where you were when the page is loaded again.":
    "Alles bis zur letzten Änderung ist in diesem Browser behalten und öffnet sich dort, wo Sie waren, wenn die Seite neu geladen wird.",
  "This window only reads the notebook; the window that has it keeps it.":
    "Dieses Fenster liest das Heft nur; das Fenster, das es hat, behält es.",
  "The latest changes are in this window only: save the notebook to a file before the page is loaded again.":
    "Die letzten Änderungen sind nur in diesem Fenster: Speichern Sie das Heft in eine Datei, bevor die Seite neu geladen wird.",
  "It does not clear them by itself.": "Er räumt sie nicht von selbst ab.",
  "Should the disk grow full it may clear them, so save to a file now and then.":
    "Wird die Platte voll, kann er sie abräumen; speichern Sie deshalb ab und zu in eine Datei.",
  "Program and notebooks take {0} of the {1} that the browser allows.":
    "Programm und Hefte belegen {0} der {1}, die der Browser erlaubt.",
};
