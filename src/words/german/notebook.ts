// Past 150 lines: one text a line.
import type { Catalogue } from "../catalogue";

/** Verdicts, and what the notebook refuses. */
export const notebook: Catalogue = {
  "no result": "kein Ergebnis",
  "the result is not a number": "das Ergebnis ist keine Zahl",
  "{0} is blank": "{0} ist leer",
  blank: "leer",
  "not used": "nicht gebraucht",
  "The branch with {0} is taken": "Der Zweig mit {0} wird genommen",
  "where it is not, the rows of its steps are not used": "wo nicht, werden die Zeilen ihrer Schritte nicht gebraucht",
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
  "{0} has {1} bytes (allowed {2}); it cannot be a page.": "{0} hat {1} Byte (erlaubt {2}); das kann keine Seite sein.",
  "{0}, row {1}: a character cannot be read; save the file as UTF-8 text.":
    "{0}, Zeile {1}: Ein Zeichen ist nicht lesbar; speichern Sie die Datei als UTF-8-Text.",
  "This page is no longer in the notebook; open another.":
    "Diese Seite ist nicht mehr im Heft; öffnen Sie eine andere.",
  "{0} has {1} options, and this needs more columns; add an option first.":
    "{0} hat {1} Varianten, und das braucht mehr Spalten; fügen Sie zuerst eine Variante hinzu.",
  'Key "{0}" on {1}, row {2}: a key is one word of letters, digits and _.':
    "Schlüssel „{0}“ auf {1}, Zeile {2}: Ein Schlüssel ist ein Wort aus Buchstaben, Ziffern und _.",
  'Key "{0}" is already on {1}, row {2}; a key names one row of its page.':
    "Der Schlüssel „{0}“ ist schon auf {1}, Zeile {2}; ein Schlüssel benennt eine Zeile seiner Seite.",
  '{0}: "{1}" is not a choice (allowed {2}).': "{0}: „{1}“ steht nicht zur Wahl (erlaubt {2}).",
  "Row 1 of {0} names the columns; rename the option instead.":
    "Zeile 1 von {0} benennt die Spalten; benennen Sie stattdessen die Variante um.",
  "{0}: row {1} cannot be changed here (allowed {2} to {3}).":
    "{0}: Zeile {1} kann hier nicht geändert werden (erlaubt {2} bis {3}).",
  "{0}: the last row cannot be removed; empty its cells instead.":
    "{0}: Die letzte Zeile kann nicht entfernt werden; leeren Sie stattdessen ihre Zellen.",
  "{0}: its columns are the hull options; add or remove an option instead.":
    "{0}: Die Spalten sind die Rumpfvarianten; fügen Sie stattdessen eine Variante hinzu oder entfernen Sie eine.",
  "{0} has {1} columns; this cannot be done at column {2}.": "{0} hat {1} Spalten; das geht nicht bei Spalte {2}.",
  'There is no option "{0}" (there are {1}).': "Es gibt keine Variante „{0}“ (vorhanden: {1}).",
  "An option needs a name that does not begin or end with a space.":
    "Eine Variante braucht einen Namen, der nicht mit einem Leerzeichen beginnt oder endet.",
  'Option name "{0}": @, quotation marks and line ends are not allowed.':
    "Variantenname „{0}“: @, Anführungszeichen und Zeilenenden sind nicht erlaubt.",
  'There is already an option "{0}"; give another name.':
    "Es gibt schon eine Variante „{0}“; geben Sie einen anderen Namen.",
  "This notebook has no option page to add an option to.":
    "Dieses Heft hat keine Variantenseite, zu der eine Variante hinzugefügt werden könnte.",
  "There are {0} options (allowed {1}); remove one first.":
    "Es gibt {0} Varianten (erlaubt {1}); entfernen Sie zuerst eine.",
  "The only option cannot be removed; rename it instead.":
    "Die einzige Variante kann nicht entfernt werden; benennen Sie sie stattdessen um.",
  Page: "Seite",
  'Page name "{0}": it must not be empty, begin or end with a space, or hold any of . ! : / \\ ? * [ ] \' " @':
    "Seitenname „{0}“: Er darf nicht leer sein, nicht mit einem Leerzeichen beginnen oder enden und keines von . ! : / \\ ? * [ ] ' \" @ enthalten",
  'There is already a page "{0}"; give another name.': "Es gibt schon eine Seite „{0}“; geben Sie einen anderen Namen.",
  "There are {0} pages (allowed {1}); remove one first.":
    "Es gibt {0} Seiten (erlaubt {1}); entfernen Sie zuerst eine.",
  "{0} is the first page already.": "{0} ist schon die erste Seite.",
  "{0} is the last page already.": "{0} ist schon die letzte Seite.",
  "{0}: cut lines are drawn from the page of this name; it may be called Offsets, or Offsets with the name of an option.":
    "{0}: Aus der Seite dieses Namens werden Schnittlinien gezeichnet; sie darf Offsets heißen, oder Offsets mit dem Namen einer Variante.",
  "The last page cannot be removed.": "Die letzte Seite kann nicht entfernt werden.",
  "{0} is an option page; the table must begin with {1} and the options.":
    "{0} ist eine Variantenseite; die Tabelle muss mit {1} und den Varianten beginnen.",
  "The table's options are {0}; the notebook has {1}: make them equal first.":
    "Die Varianten der Tabelle sind {0}; das Heft hat {1}: Machen Sie sie zuerst gleich.",
  'notebook.json names the file "{0}" for {1}; a page\'s file is a plain name that ends in .csv.':
    "notebook.json nennt die Datei „{0}“ für {1}; die Datei einer Seite hat einen einfachen Namen, der auf .csv endet.",
  "{0} is missing; notebook.json names it for the page {1}.": "{0} fehlt; notebook.json nennt sie für die Seite {1}.",
  "notebook.json: the title": "notebook.json: der Titel",
  "notebook.json: the page": "notebook.json: die Seite",
  "notebook.json has {0} pages (allowed {1}).": "notebook.json hat {0} Seiten (erlaubt {1}).",
  "{0}, row 1, column {1}: the options differ from those of {2}; make them equal.":
    "{0}, Zeile 1, Spalte {1}: Die Varianten weichen von denen auf {2} ab; machen Sie sie gleich.",
  "{0} is missing; a notebook is a folder with it and one CSV a page.":
    "{0} fehlt; ein Heft ist ein Ordner damit und mit einer CSV-Datei je Seite.",
  'notebook.json has two pages with the {0} "{1}".': "notebook.json hat zwei Seiten mit {0} „{1}“.",
  "The option": "Die Variante",
  "The pages have {0} options (allowed {1}).": "Die Seiten haben {0} Varianten (erlaubt {1}).",
  "notebook.json is not valid JSON{0}: mend it there, or take an earlier copy.":
    "notebook.json ist kein gültiges JSON{0}: Bringen Sie es dort in Ordnung oder nehmen Sie eine frühere Kopie.",
  ", line {0}": ", Zeile {0}",
  "notebook.json holds lists inside one another more than {0} deep; it cannot be a notebook's.":
    "notebook.json enthält mehr als {0} Listen ineinander; das kann kein Heft sein.",
  "notebook.json must hold one object with a title and a list of pages.":
    "notebook.json muss ein Objekt mit einem Titel und einer Seitenliste enthalten.",
  "notebook.json, version: {0} is not a version (this program knows 0 to {1}).":
    "notebook.json, version: {0} ist keine Fassung (dieses Programm kennt 0 bis {1}).",
  "This notebook has version {0}; this program knows up to {1}: open it with a newer one.":
    "Dieses Heft hat die Fassung {0}; dieses Programm kennt bis {1}: Öffnen Sie es mit einem neueren.",
  "notebook.json, {0}: {1}.": "notebook.json, {0}: {1}.",
  "not as expected": "nicht wie erwartet",
  "{0}, row {1}: a quotation mark is not closed or stands inside a cell; double it or remove it.":
    "{0}, Zeile {1}: Ein Anführungszeichen ist nicht geschlossen oder steht in einer Zelle; verdoppeln oder entfernen Sie es.",
  "{0}, row {1}, column {2}": "{0}, Zeile {1}, Spalte {2}",
  "{0}: the row has {1} cells, the first row has {2}; make them equal.":
    "{0}: Die Zeile hat {1} Zellen, die erste Zeile hat {2}; machen Sie sie gleich.",
  '"{0}" is not an address; write Page.key@Option, for example Supply.run@Cruiser.':
    "„{0}“ ist keine Adresse; schreiben Sie Seite.Schlüssel@Variante, zum Beispiel Supply.run@Cruiser.",
  'There is no page "{0}" (there are {1}).': "Es gibt keine Seite „{0}“ (vorhanden: {1}).",
  'There is no key "{0}" on {1} (there are {2}).': "Es gibt keinen Schlüssel „{0}“ auf {1} (vorhanden: {2}).",
  '"{0}.{1}" names a row; add the option, for example {2}@Option.':
    "„{0}.{1}“ benennt eine Zeile; fügen Sie die Variante hinzu, zum Beispiel {2}@Variante.",
  "{0} is not written in {1}; choose another encoding.":
    "{0} ist nicht in {1} geschrieben; wählen Sie einen anderen Zeichensatz.",
  "{0} holds bytes that are no text; choose a CSV file.":
    "{0} enthält Bytes, die kein Text sind; wählen Sie eine CSV-Datei.",
  "{0}, row {1}: a quotation mark is not closed or stands inside a cell.":
    "{0}, Zeile {1}: Ein Anführungszeichen ist nicht geschlossen oder steht in einer Zelle.",
  "{0} is empty.": "{0} ist leer.",
  "{0}: {1} takes {2} arguments, got {3}; mend it, then unfold it.":
    "{0}: {1} nimmt {2} Argumente, bekam {3}; bringen Sie es in Ordnung, dann lösen Sie auf.",
  "{0}: {1} is a range and {2} takes single cells; mend it, then unfold it.":
    "{0}: {1} ist ein Bereich und {2} nimmt einzelne Zellen; bringen Sie es in Ordnung, dann lösen Sie auf.",
  "{0}{1}{2} reads whole columns of {3}, new rows would count in it; name its rows, then unfold.":
    "{0}{1}{2} liest ganze Spalten von {3}, neue Zeilen zählten darin mit; nennen Sie ihre Zeilen, dann lösen Sie auf.",
  "{0} is a free sheet; a function is unfolded on a page with options, where rows have units.":
    "{0} ist ein freies Blatt; eine Funktion wird auf einer Seite mit Varianten aufgelöst, wo Zeilen Einheiten haben.",
  "Row {0} of {1} does not call {2}; choose a row that does.":
    "Zeile {0} von {1} ruft {2} nicht auf; wählen Sie eine Zeile, die es tut.",
  "{0} of {1}; allowed {2}": "{0} aus {1}; erlaubt {2}",
  "The zip holds more than {0} files or {1} bytes; it cannot be a notebook.":
    "Die Zip-Datei enthält mehr als {0} Dateien oder {1} Byte; das kann kein Heft sein.",
  "The file is not a zip that can be read; it may be damaged or of another kind.":
    "Die Datei ist keine lesbare Zip-Datei; sie ist vielleicht beschädigt oder von anderer Art.",
  'The zip holds "{0}"; a notebook\'s files lie in one folder, with plain names.':
    "Die Zip-Datei enthält „{0}“; die Dateien eines Hefts liegen in einem Ordner, mit einfachen Namen.",
  "This browser keeps no notebooks here (private window or blocked storage): save to a file.":
    "Dieser Browser behält hier keine Hefte (privates Fenster oder gesperrter Speicher): Speichern Sie in eine Datei.",
  "The notebooks kept in this browser were written by a newer version of this program: reload the page to get it, or save to a file.":
    "Die in diesem Browser behaltenen Hefte wurden von einer neueren Fassung dieses Programms geschrieben: Laden Sie die Seite neu, um sie zu bekommen, oder speichern Sie in eine Datei.",
  "The browser's database does not answer, perhaps because another window holds it: close other windows of this program and reload, or save to a file.":
    "Die Datenbank des Browsers antwortet nicht, vielleicht weil ein anderes Fenster sie hält: Schließen Sie andere Fenster dieses Programms und laden Sie neu, oder speichern Sie in eine Datei.",
  "The browser does not open its database ({0}): save to a file.":
    "Der Browser öffnet seine Datenbank nicht ({0}): Speichern Sie in eine Datei.",
  "This notebook is open in another window: close it there first.":
    "Dieses Heft ist in einem anderen Fenster offen: Schließen Sie es dort zuerst.",
  '"{0}" is not deleted; delete it first.': "„{0}“ ist nicht gelöscht; löschen Sie es zuerst.",
  "the notebook to keep is not in the state that was kept":
    "das zu behaltende Heft ist nicht in dem Stand, der behalten wurde",
  "as it was at the start": "wie es am Anfang war",
  "This state is no longer kept; choose a later one.":
    "Dieser Stand wird nicht mehr behalten; wählen Sie einen späteren.",
  Version: "Fassung",
  "A version needs a name.": "Eine Fassung braucht einen Namen.",
  "This version is no longer kept; choose another.": "Diese Fassung wird nicht mehr behalten; wählen Sie eine andere.",
  "A part of this notebook's journal was damaged; its present state was saved apart and is whole, older steps cannot be taken back.":
    "Ein Teil des Tagebuchs dieses Hefts war beschädigt; sein jetziger Stand wurde gesondert gesichert und ist ganz, ältere Schritte können nicht zurückgenommen werden.",
  "The end of this notebook's journal was damaged; the last changes may be missing: compare with a named version or a file.":
    "Das Ende des Tagebuchs dieses Hefts war beschädigt; die letzten Änderungen fehlen vielleicht: Vergleichen Sie mit einer benannten Fassung oder einer Datei.",
  '"{0}" is deleted; restore it first.': "„{0}“ ist gelöscht; stellen Sie es zuerst wieder her.",
  "This notebook is no longer kept in this browser; open another.":
    "Dieses Heft wird in diesem Browser nicht mehr behalten; öffnen Sie ein anderes.",
  "This notebook is open in another window, which keeps it; here it can be read, or taken over from there.":
    "Dieses Heft ist in einem anderen Fenster offen, das es behält; hier kann es gelesen oder von dort übernommen werden.",
  "Another window has taken this notebook over; changes made here are no longer kept: go on there, or save to a file.":
    "Ein anderes Fenster hat dieses Heft übernommen; hier gemachte Änderungen werden nicht mehr behalten: Machen Sie dort weiter oder speichern Sie in eine Datei.",
  "The browser has closed its database, or a newer version of the program needs it: save to a file, then reload the page.":
    "Der Browser hat seine Datenbank geschlossen, oder eine neuere Fassung des Programms braucht sie: Speichern Sie in eine Datei, dann laden Sie die Seite neu.",
  "The browser has no room left, so the latest changes are in this window only: save to a file, or erase notebooks that are no longer needed.":
    "Der Browser hat keinen Platz mehr, darum sind die letzten Änderungen nur in diesem Fenster: Speichern Sie in eine Datei oder löschen Sie Hefte, die nicht mehr gebraucht werden.",
  "The browser's database did not take the latest changes ({0}); they are in this window only: save to a file.":
    "Die Datenbank des Browsers hat die letzten Änderungen nicht angenommen ({0}); sie sind nur in diesem Fenster: Speichern Sie in eine Datei.",
};
