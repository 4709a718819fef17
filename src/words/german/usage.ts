import type { Catalogue } from "../catalogue";

/** What `--help` prints on the terminal. */
export const usage: Catalogue = {
  "Athwart on the terminal": "Athwart im Terminal",
  "eval '=FORMULA'": "eval '=FORMEL'",
  "one value": "ein Wert",
  "one formula a line from standard input, one JSON object a line":
    "je Zeile der Standardeingabe eine Formel, je Zeile ein JSON-Objekt",
  "calc FOLDER [--set Page.key@Option=value]... [--page NAME] [--json]":
    "calc ORDNER [--set Seite.Schlüssel@Variante=Wert]... [--page NAME] [--json]",
  "the pages of a notebook, calculated": "die Seiten eines Hefts, gerechnet",
  "working FOLDER Page.key@Option [--json]": "working ORDNER Seite.Schlüssel@Variante [--json]",
  "how a cell comes to its value, step by step": "wie eine Zelle zu ihrem Wert kommt, Schritt für Schritt",
  "unfold FOLDER Page.key [--function NAME] [--write FOLDER]":
    "unfold ORDNER Seite.Schlüssel [--function NAME] [--write ORDNER]",
  "the steps of a named function as rows of plain formulas in its place; --write keeps the notebook with them":
    "die Schritte einer benannten Funktion als Zeilen einfacher Formeln an ihrer Stelle; --write schreibt das Heft damit",
  "audit FOLDER [--json] [--record] [--against FOLDER]": "audit ORDNER [--json] [--record] [--against ORDNER]",
  "what the checks find; --record as a sheet to sign, --against lists what was adapted; ends with 1 when there is an error":
    "was die Prüfung findet; --record als Blatt zum Unterschreiben, --against nennt, was angepasst wurde; endet mit 1, wenn ein Fehler dabei ist",
  "options FOLDER --from FILE.csv [--rows 'Compare.*'] [--base OPTION]":
    "options ORDNER --from DATEI.csv [--rows 'Compare.*'] [--base VARIANTE]",
  "results of many options as CSV: a column option, then Page.key columns; what the file leaves out is the base option's":
    "Ergebnisse vieler Varianten als CSV: eine Spalte option, dann Spalten Seite.Schlüssel; was die Datei auslässt, gilt wie bei der Variante von --base",
  "solve FOLDER Page.key@Option=VALUE --by Page.key [--low N --high N] [--at-most] [--json]":
    "solve ORDNER Seite.Schlüssel@Variante=WERT --by Seite.Schlüssel [--low N --high N] [--at-most] [--json]",
  "the input that gives a result; checks@Option instead: the smallest that makes all checks hold":
    "die Eingabe, die ein Ergebnis liefert; stattdessen checks@Variante: die kleinste, mit der alle Nachweise erfüllt sind",
  "moves FOLDER Page.key@Option [--csv] [--json]": "moves ORDNER Seite.Schlüssel@Variante [--csv] [--json]",
  "what moves a result, input by input": "was ein Ergebnis bewegt, Eingabe für Eingabe",
  "spread FOLDER 'Page.*@Option' --vary Page.key=LOW,LIKELY,HIGH... [--common 0..1] [--trials N] [--seed N] [--json]":
    "spread ORDNER 'Seite.*@Variante' --vary Seite.Schlüssel=NIEDRIG,WAHRSCHEINLICH,HOCH... [--common 0..1] [--trials N] [--seed N] [--json]",
  "how results spread, and the chance that checks hold; also =LOW,HIGH =±5% =LIKELY±SPREAD":
    "wie Ergebnisse streuen und mit welcher Wahrscheinlichkeit Nachweise erfüllt sind; auch =NIEDRIG,HOCH =±5% =WAHRSCHEINLICH±STREUUNG",
  "own FOLDER [--copy NAME --as NEW.NAME | --begin NEW.NAME] [--write FOLDER]":
    "own ORDNER [--copy NAME --as NEUER.NAME | --begin NEUER.NAME] [--write ORDNER]",
  "the notebook's own functions with their examples; --copy writes one down under another name, --begin a small new one, --write keeps the notebook with it":
    "die eigenen Funktionen des Hefts mit ihren Beispielen; --copy schreibt eine unter anderem Namen nieder, --begin eine kleine neue, --write schreibt das Heft damit",
  "list [WORD]... [--of FOLDER] [--json]": "list [WORT]... [--of ORDNER] [--json]",
  "the named functions that say all the words: arguments, units, mathematics, limits, sources, an example; all of them without words; --of: a notebook's own functions too":
    "die benannten Funktionen, in denen alle Wörter vorkommen: Argumente, Einheiten, Mathematik, Grenzen, Quellen, ein Beispiel; ohne Wörter alle; --of: auch die eigenen Funktionen eines Hefts",
  "print FOLDER --layout NAME --option OPTION [--paper A4|Letter|A3] [--out FILE] [--html]":
    "print ORDNER --layout NAME --option VARIANTE [--paper A4|Letter|A3] [--out DATEI] [--html]",
  "a sheet for the shop or the customer as PDF, as HTML where there is no browser: job-sheet, materials, estimate, hand-over, service, templates":
    "ein Blatt für die Werkstatt oder den Kunden als PDF, als HTML, wo es keinen Browser gibt: job-sheet, materials, estimate, hand-over, service, templates",
  "proof FOLDER": "proof ORDNER",
  "writes the pages Proof and Tables of a notebook anew from the functions":
    "schreibt die Seiten Proof und Tables eines Hefts aus den Funktionen neu",
  "task COURSE [TASK] --for TRAINEE [--print] [--html] [--hints N] [--solution]":
    "task KURS [AUFGABE] --for TEILNEHMER [--print] [--html] [--hints N] [--solution]",
  "a trainee's file as CSV; --print and --html a sheet, --solution the trainer's":
    "die Datei eines Teilnehmers als CSV; --print und --html ein Blatt, --solution das des Ausbilders",
  "class COURSE CLASS.csv [--into FOLDER [--solution]]": "class KURS KLASSE.csv [--into ORDNER [--solution]]",
  "all trainees' numbers and answers; --into writes each trainee's file and sheet":
    "Zahlen und Antworten aller Teilnehmer; --into schreibt Datei und Blatt jedes Teilnehmers",
  "mark COURSE FILE... [--class CLASS.csv] [--csv] [--json]":
    "mark KURS DATEI... [--class KLASSE.csv] [--csv] [--json]",
  "marks the files that came back, mistakes by name":
    "bewertet die Dateien, die zurückkamen, und nennt Fehler beim Namen",
  "Every command takes --language en|de: English, where nothing is said, or German with a decimal comma in what a person reads. What is typed has a decimal point in both, and so have JSON and CSV, whose names stay English.":
    "Jeder Befehl nimmt --language en|de: Englisch, wo nichts gesagt ist, oder Deutsch mit Dezimalkomma in allem, was ein Mensch liest. Was eingegeben wird, hat in beiden einen Dezimalpunkt, ebenso JSON und CSV, deren Namen englisch bleiben.",
};
