// Past 150 lines: one text a line.
import type { Catalogue } from "../catalogue";

/** What the terminal prints and refuses. */
export const terminal: Catalogue = {
  "error / errors": { one: "{0} Fehler", other: "{0} Fehler" },
  "warning / warnings": { one: "{0} Warnung", other: "{0} Warnungen" },
  "note / notes": { one: "{0} Hinweis", other: "{0} Hinweise" },
  "{0} is not known; --help lists what there is, and -- ends it for a text that begins so.":
    "{0} ist nicht bekannt; --help nennt, was es gibt, und hinter -- darf ein Text so beginnen.",
  '{0} takes no value; leave "{1}" out.': "{0} nimmt keinen Wert; lassen Sie „{1}“ weg.",
  "{0} needs a value after it.": "Nach {0} fehlt ein Wert.",
  "{0} has no value before {1}; a value that begins so is written {2}={3}.":
    "{0} hat keinen Wert vor {1}; ein Wert, der so beginnt, wird {2}={3} geschrieben.",
  "The program failed in itself: {0}": "Das Programm ist in sich gescheitert: {0}",
  "{0} takes one folder, for example sheets/three-hulls.": "{0} nimmt einen Ordner, zum Beispiel sheets/three-hulls.",
  'There is no command "{0}" (there are eval, calc, working, unfold, audit, options, solve, moves, spread, own, list, print, proof, task, class, mark).':
    "Es gibt keinen Befehl „{0}“ (vorhanden: eval, calc, working, unfold, audit, options, solve, moves, spread, own, list, print, proof, task, class, mark).",
  "{0} accepted": "{0} angenommen",
  "in {0} formulas": "in {0} Formeln",
  "--set {0}: write Page.key@Option=value, for example Supply.I_run@Cruiser=350.":
    "--set {0}: Schreiben Sie Seite.Schlüssel@Variante=Wert, zum Beispiel Supply.I_run@Cruiser=350.",
  "--set {0}: this cell is calculated; set one of the inputs that it depends on.":
    "--set {0}: Diese Zelle wird gerechnet; setzen Sie eine der Eingaben, von denen sie abhängt.",
  "--set {0}: an input is a number or a text, not a formula.":
    "--set {0}: Eine Eingabe ist eine Zahl oder ein Text, keine Formel.",
  "{0} cannot be read; name a CSV file.": "{0} ist nicht lesbar; nennen Sie eine CSV-Datei.",
  "--hints {0}: give how many hints to print, for example --hints 1.":
    "--hints {0}: Geben Sie an, wie viele Hilfen zu drucken sind, zum Beispiel --hints 1.",
  "task takes a course, a task and a trainee, for example task sheets/course 4 --for T07 --print.":
    "task nimmt einen Kurs, eine Aufgabe und einen Teilnehmer, zum Beispiel task sheets/course 4 --for T07 --print.",
  "class takes a course and a class list, for example class sheets/course class.csv.":
    "class nimmt einen Kurs und eine Klassenliste, zum Beispiel class sheets/course klasse.csv.",
  "eval --lines reads its formulas from standard input; leave the formula out.":
    "eval --lines liest seine Formeln aus der Standardeingabe; lassen Sie die Formel weg.",
  "eval takes one formula in quotation marks, for example eval '=CONDUCTOR.DROP(300, 10, 50)'.":
    "eval nimmt eine Formel in Anführungszeichen, zum Beispiel eval '=CONDUCTOR.DROP(300, 10, 50)'.",
  '{0} is "{1}", which is no program that can be run: correct it or unset it.':
    "{0} ist „{1}“, und das ist kein ausführbares Programm: Berichtigen Sie es oder nehmen Sie es zurück.",
  "{0} is not a folder; name the folder that holds notebook.json.":
    "{0} ist kein Ordner; nennen Sie den Ordner, der notebook.json enthält.",
  "{0}; allowed {1}": "{0}; erlaubt {1}",
  "holds: {0}": "gilt: {0}",
  "caution: {0}": "Vorsicht: {0}",
  "source: {0}": "Quelle: {0}",
  "example: {0}": "Beispiel: {0}",
  'No function says "{0}"; try one word of it, or a quantity such as drop.':
    "In keiner Funktion kommt „{0}“ vor; versuchen Sie ein Wort davon oder eine Größe wie Spannung.",
  "not marked: {0}": "nicht bewertet: {0}",
  task: "Aufgabe",
  typed: "eingegeben",
  mark: "Bewertung",
  "how many": "wie oft",
  outcome: "Ergebnis",
  who: "wer",
  "mark takes a course and the files to mark, for example mark sheets/course answers/*.csv.":
    "mark nimmt einen Kurs und die Dateien, die zu bewerten sind, zum Beispiel mark sheets/course antworten/*.csv.",
  "{0} of {1} right": "{0} von {1} richtig",
  "No file came from: {0}": "Keine Datei kam von: {0}",
  "{0} is {1}. Each input by itself, the rest as in the notebook:":
    "{0} ist {1}. Jede Eingabe für sich, alles andere wie im Heft:",
  "moves takes a folder and a result, for example moves sheets/three-hulls Estimate.price_80@Cruiser.":
    "moves nimmt einen Ordner und ein Ergebnis, zum Beispiel moves sheets/three-hulls Estimate.price_80@Cruiser.",
  "{0}: name one result, not {1}.": "{0}: Nennen Sie ein Ergebnis, nicht {1}.",
  "options needs the file with the options, for example --from boats.csv.":
    "options braucht die Datei mit den Varianten, zum Beispiel --from boote.csv.",
  "{0} cannot be read; name a CSV file with a column option and Page.key columns.":
    "{0} ist nicht lesbar; nennen Sie eine CSV-Datei mit einer Spalte option und Spalten Seite.Schlüssel.",
  "{0}, row {1}: {2}": "{0}, Zeile {1}: {2}",
  "{0}, row {1}": "{0}, Zeile {1}",
  "example: {0}, expected {1}: {2}": "Beispiel: {0}, erwartet {1}: {2}",
  agrees: "stimmt",
  disagrees: "stimmt nicht",
  "--copy NAME needs --as NEW.NAME, for example --copy CONDUCTOR.DROP --as YARD.DROP.":
    "--copy NAME braucht --as NEUER.NAME, zum Beispiel --copy CONDUCTOR.DROP --as YARD.DROP.",
  "There is no function {0}; `list` prints all names.": "Es gibt keine Funktion {0}; `list` nennt alle Namen.",
  "This notebook defines no functions of its own.": "Dieses Heft hat keine eigenen Funktionen.",
  "written to {0}, page {1}, row {2}": "geschrieben nach {0}, Seite {1}, Zeile {2}",
  "written to {0}": "geschrieben nach {0}",
  "{0} printed no {1}{2}; save it with --html and print that.":
    "{0} hat kein {1} gedruckt{2}; schreiben Sie es mit --html und drucken Sie das.",
  '--layout "{0}" is not a layout; choose one of {1}.': "--layout „{0}“ ist kein Blatt; wählen Sie eines von {1}.",
  '--paper "{0}" is not a paper for {1}; choose {2}.': "--paper „{0}“ ist kein Papier für {1}; wählen Sie {2}.",
  "print needs --option; this notebook has {0}.": "print braucht --option; dieses Heft hat {0}.",
  "{0}: printed on {1}.": "{0}: gedruckt auf {1}.",
  "No Chromium or Chrome was found, so this is HTML and not PDF: open it in a browser and print it there.":
    "Kein Chromium oder Chrome gefunden, darum ist dies HTML und kein PDF: Öffnen Sie es in einem Browser und drucken Sie es dort.",
  "{0}: written for {1}.": "{0}: geschrieben für {1}.",
  "{0}: notebook.json lists neither Proof nor Tables.": "{0}: notebook.json nennt weder Proof noch Tables.",
  "solve takes a folder, a result with the value that is wanted, and the input to change, for example solve sheets/three-hulls Supply.drop@Cruiser=0.5 --by Supply.run.":
    "solve nimmt einen Ordner, ein Ergebnis mit dem gewünschten Wert und die Eingabe, die sich ändern soll, zum Beispiel solve sheets/three-hulls Supply.drop@Cruiser=0.5 --by Supply.run.",
  "{0}: write the value that is wanted, for example {1}=0.5, or checks@Option.":
    "{0}: Schreiben Sie den gewünschten Wert, zum Beispiel {1}=0.5, oder checks@Variante.",
  "The value that is wanted,": "Der gewünschte Wert,",
  "--common {0} (allowed 0 to 1: each by itself to all in step).":
    "--common {0} (erlaubt 0 bis 1: von jede für sich bis alle im Gleichschritt).",
  "--trials {0} (allowed whole numbers from 10 to {1}).": "--trials {0} (erlaubt ganze Zahlen von 10 bis {1}).",
  "--seed {0}: write a whole number of at most nine digits.":
    "--seed {0}: Schreiben Sie eine ganze Zahl mit höchstens neun Ziffern.",
  "--vary {0}: after Page.key= {1}.": "--vary {0}: nach Seite.Schlüssel= {1}.",
  "--vary {0}: no result hangs on it.": "--vary {0}: Kein Ergebnis hängt davon ab.",
  "spread needs inputs that vary, for example --vary Supply.run=10,11.5,14 or --vary 'Estimate.*=±5%'.":
    "spread braucht Eingaben, die streuen, zum Beispiel --vary Supply.run=10,11.5,14 oder --vary 'Estimate.*=±5%'.",
  "Check holds": "Nachweis erfüllt",
  "{0}: {1} trials, seed {2}, common cause {3}; varied {4}.":
    "{0}: {1} Durchgänge, Startzahl {2}, gemeinsame Ursache {3}; gestreut: {4}.",
  "The same in every trial: {0}.": "In jedem Durchgang gleich: {0}.",
  "Without a number: {0}.": "Ohne Zahl: {0}.",
  "All checks asked for hold in {0} of the trials.": "Alle gefragten Nachweise sind in {0} der Durchgänge erfüllt.",
  "Every input varied by itself; where one cause moves several together, say how far with --common 0 to 1.":
    "Jede Eingabe streute für sich; wo eine Ursache mehrere zugleich bewegt, sagen Sie mit --common 0 bis 1, wie weit.",
  "spread takes a folder and results, for example spread sheets/three-hulls Estimate.price_80@Cruiser.":
    "spread nimmt einen Ordner und Ergebnisse, zum Beispiel spread sheets/three-hulls Estimate.price_80@Cruiser.",
  "--by {0}: name one input, for example Supply.run.": "--by {0}: Nennen Sie eine Eingabe, zum Beispiel Supply.run.",
  '{0} is no input of this result; see "moves" for those that are.':
    "{0} ist keine Eingabe dieses Ergebnisses; „moves“ nennt diese.",
  "{0} {1}: write a plain number.": "{0} {1}: Schreiben Sie eine reine Zahl.",
  "Formula for {0}": "Formel für {0}",
  "unfold takes a folder and a row, for example unfold sheets/three-hulls Upkeep.oil_head.":
    "unfold nimmt einen Ordner und eine Zeile, zum Beispiel unfold sheets/three-hulls Upkeep.oil_head.",
  "{0} calls no named function; choose a row that does.":
    "{0} ruft keine benannte Funktion auf; wählen Sie eine Zeile, die es tut.",
  "{0} does not call {1} (it calls {2}).": "{0} ruft {1} nicht auf (aufgerufen: {2}).",
  "{0} in {1}, unfolded into {2}": "{0} in {1}, aufgelöst in {2}",
  "{0}; {1}, allowed {2}": "{0}; {1}, erlaubt {2}",
  "by default": "nach Vorgabe",
  "refused: {0}": "abgelehnt: {0}",
  "{0} (the notebook's own function, page {1})": "{0} (eigene Funktion des Hefts, Seite {1})",
  "valid: {0}": "gilt für: {0}",
  "inside: {0}": "Bereich: {0}",
  "in a branch that is not taken": "in einem Zweig, der nicht genommen wird",
  "choices: {0}": "Auswahl: {0}",
  "plausible: {0} to {1}{2}{3}": "plausibel: {0} bis {1}{2}{3}",
  ", likely {0}": ", wahrscheinlich {0}",
  "; this value is outside": "; dieser Wert liegt außerhalb",
  "outside what is plausible: {0}": "außerhalb des Plausiblen: {0}",
  "{0}, cell {1}": "{0}, Zelle {1}",
  "basis: {0}": "Basis: {0}",
  "input, basis: {0}": "Eingabe, Basis: {0}",
  "fed by": "gespeist von",
  feeds: "speist",
  "working takes a folder and a cell, for example working sheets/three-hulls Supply.drop@Cruiser.":
    "working nimmt einen Ordner und eine Zelle, zum Beispiel working sheets/three-hulls Supply.drop@Cruiser.",
  "There is no cell {0}.": "Es gibt keine Zelle {0}.",
};
