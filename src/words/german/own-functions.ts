// Past 150 lines: one text a line.
import type { Catalogue } from "../catalogue";

/** Functions that a notebook defines itself: mistakes in their rows, their page, what stands beside it. */
export const ownFunctions: Catalogue = {
  "{0}, row {1}: {2}": "{0}, Zeile {1}: {2}",
  '"{0}" cannot be a function\'s name; write two words in capitals with a point between them, as in YARD.DROP':
    "„{0}“ kann kein Funktionsname sein; schreiben Sie zwei Wörter in Großbuchstaben mit einem Punkt dazwischen, wie YARD.DROP",
  "{0} is a shipped function; give your own another name":
    "{0} ist eine mitgelieferte Funktion; geben Sie Ihrer einen anderen Namen",
  "{0} is a function of the formula language; give your own another name":
    "{0} ist eine Funktion der Formelsprache; geben Sie Ihrer einen anderen Namen",
  "this row belongs to no function; begin with a row whose Part is function":
    "diese Zeile gehört zu keiner Funktion; beginnen Sie mit einer Zeile, deren Teil function ist",
  "{0} is defined in row {1} of {2} already; give one of them another name":
    "{0} ist schon in Zeile {1} von {2} definiert; geben Sie einer der beiden einen anderen Namen",
  "{0} is one of the notebook's own functions already; give another name":
    "{0} ist schon eine eigene Funktion des Hefts; geben Sie einen anderen Namen an",
  "Own functions": "Eigene Funktionen",
  "example: takes {0} arguments, got {1}": "example: {0} Argumente sind vorgesehen, {1} stehen da",
  'example: "{0}" for {1} is no number, text in quotation marks, TRUE or FALSE':
    "example: „{0}“ für {1} ist weder Zahl noch Text in Anführungszeichen, TRUE oder FALSE",
  "example: write in the column Limits what comes out, as in 1.158 ± 0.0005":
    "example: Schreiben Sie in die Spalte Grenzen, was herauskommt, wie 1.158 ± 0.0005",
  '"{0}" is no part of a function (there are {1})': "„{0}“ ist kein Teil einer Funktion (es gibt {1})",
  "{0}: {1} is the result already; the result is the last step, and there is one":
    "{0}: {1} ist schon das Ergebnis; das Ergebnis ist der letzte Schritt, und es gibt nur eines",
  "{0}: say in the column Why what the function gives": "{0}: Sagen Sie in der Spalte Warum, was die Funktion ergibt",
  "{0}: no row is its result; name the last step result":
    "{0}: Keine Zeile ist das Ergebnis; nennen Sie den letzten Schritt result",
  '{0} "{1}": a name is letters, digits and _, and begins with a letter':
    "{0} „{1}“: Ein Name besteht aus Buchstaben ohne Umlaute, Ziffern und _ und beginnt mit einem Buchstaben",
  "{0} {1}: this word means something else in a formula; take another":
    "{0} {1}: Dieses Wort hat in einer Formel eine andere Bedeutung; nehmen Sie ein anderes",
  "{0}: the unit is missing; write it as in mm, m2, kg/m3, or 1 for a plain number":
    "{0}: Die Einheit fehlt; schreiben Sie sie wie mm, m2, kg/m3 oder 1 für eine bloße Zahl",
  '{0}: unit "{1}" is not known; write it as in mm, m2, kg/m3, N m, or 1 for a plain number':
    "{0}: Die Einheit „{1}“ ist nicht bekannt; schreiben Sie sie wie mm, m2, kg/m3, N m oder 1 für eine bloße Zahl",
  "{0}: say in the column Why what it is": "{0}: Sagen Sie in der Spalte Warum, was es ist",
  "there is no shipped function {0}; see the list of functions":
    "es gibt keine mitgelieferte Funktion {0}; siehe die Liste der Funktionen",
  "a number": "eine Zahl",
  'text in quotation marks, as in "port"': 'Text in Anführungszeichen, wie "port"',
  'argument {0}: "{1}" cannot be what is taken when it is left out; write {2}, or nothing':
    "argument {0}: „{1}“ kann nicht gelten, wenn das Argument fehlt; schreiben Sie {2} oder nichts",
  "argument {0}: {1} has no argument of this name": "argument {0}: {1} hat kein Argument dieses Namens",
  'argument {0}: limits "{1}" cannot be read; write them as in {2}':
    "argument {0}: Die Grenzen „{1}“ sind nicht lesbar; schreiben Sie sie wie {2}",
  'constant {0}: "{1}" is not a number with a decimal point':
    "constant {0}: „{1}“ ist keine Zahl, wie sie in der Datei mit Dezimalpunkt steht",
  "constant {0}: a constant has one unit; write it as in mm, or 1 for a plain number":
    "constant {0}: Eine Konstante hat eine Einheit; schreiben Sie sie wie mm oder 1 für eine bloße Zahl",
  "{0}: the formula is missing": "{0}: Die Formel fehlt",
  "{0}: write the formula without the equals sign; it speaks of names and not of cells":
    "{0}: Schreiben Sie die Formel ohne Gleichheitszeichen; sie spricht von Namen und nicht von Zellen",
  "{0}: {1} has no step of this name": "{0}: {1} hat keinen Schritt dieses Namens",
  "{0} is defined twice": "{0} ist zweimal definiert",
  "{0} is not defined before its use": "{0} ist nicht definiert, bevor es gebraucht wird",
  "{0} needs an argument": "{0} braucht ein Argument",
  "a condition stands where a number is due": "eine Bedingung steht, wo eine Zahl hingehört",
  "a number stands where a condition is due": "eine Zahl steht, wo eine Bedingung hingehört",
  'formula "{0}": {1}': "Formel „{0}“: {1}",
  "an operator needs two sides": "ein Rechenzeichen braucht zwei Seiten",
  "write the product sign *": "schreiben Sie das Malzeichen *",
  "{0} is not allowed": "{0} ist nicht erlaubt",
  "function {0} is not known": "die Funktion {0} ist nicht bekannt",
  "{0} takes {1}, got {2}": "{0} nimmt {1}, es stehen {2} da",
  "brackets with nothing in them": "Klammern ohne Inhalt",
  "a choice needs what holds and what else, as in a > b ? c : d": "eine Auswahl braucht beide Fälle, wie a > b ? c : d",
  "it cannot be read at character {0}; look for a sign or a bracket too many or too few":
    "sie ist am Zeichen {0} nicht lesbar; suchen Sie ein Zeichen oder eine Klammer zu viel oder zu wenig",
  "it cannot be read; look for a sign or a bracket too many or too few":
    "sie ist nicht lesbar; suchen Sie ein Zeichen oder eine Klammer zu viel oder zu wenig",
  "to be replaced": "zu ersetzen",
  "What it gives, in the words of the trade": "Was sie ergibt, in den Worten des Fachs",
  "share that is cut away": "Anteil, der weggeschnitten wird",
  "mass of one metre": "Masse eines Meters",
  "what is bought": "was gekauft wird",
  "mass of what is bought": "Masse des Gekauften",
  "Where it may be used, and what it leaves out.": "Wo sie gilt und was sie weglässt.",
  "own arithmetic": "eigene Rechnung",
  "Nothing is said of where it may be used.": "Es ist nichts darüber gesagt, wo sie gilt.",
  "none is named": "keine genannt",
  "Row 1 of {0} names the columns of its functions; without it they would be gone, so it stays as it is.":
    "Zeile 1 von {0} benennt die Spalten der Funktionen; ohne sie wären sie verloren, deshalb bleibt sie, wie sie ist.",
  "{0}: its first {1} columns hold the parts of functions; columns can come and go behind them.":
    "{0}: Die ersten {1} Spalten enthalten die Teile der Funktionen; Spalten können dahinter kommen und gehen.",
  "{0} defines functions; the table must begin with {1}, or go onto a page of its own.":
    "{0} definiert Funktionen; die Tabelle muss mit {1} beginnen oder auf eine eigene Seite kommen.",
  "the function gives what the example says": "die Funktion ergibt, was das Beispiel sagt",
  "The function gives what the example says.": "Die Funktion ergibt, was das Beispiel sagt.",
  mistake: "Fehler",
  "of one value": "von einem Wert",
  "of {0} values": "von {0} Werten",
  "circumference over diameter": "Umfang durch Durchmesser",
  Part: "Teil",
  Formula: "Formel",
  Limits: "Grenzen",
  Why: "Warum",
  Source: "Quelle",
  "{0} taken onto {1}, with a mistake in a function, {2}; mend it there, or undo.":
    "{0} auf {1} übernommen, mit einem Fehler in einer Funktion, {2}; beheben Sie ihn dort, oder machen Sie es rückgängig.",
  "row {0}: {1}": "Zeile {0}: {1}",
  "Function and notes": "Funktion und Notizen",
  Function: "Funktion",
  "No row begins a function yet. Choose function in the column Part, write its name beside it, as in YARD.DROP, and in the column Why what it gives.":
    "Noch beginnt keine Zeile eine Funktion. Wählen Sie in der Spalte Teil das Wort function, schreiben Sie daneben den Namen, wie YARD.DROP, und in die Spalte Warum, was sie ergibt.",
  "Row {0}": "Zeile {0}",
  "Until they are mended, cells that call the function say so. Everything else calculates.":
    "Bis sie behoben sind, sagen es die Zellen, die die Funktion aufrufen. Alles andere rechnet.",
  "Until it is mended, cells that call the function say so. Everything else calculates.":
    "Bis er behoben ist, sagen es die Zellen, die die Funktion aufrufen. Alles andere rechnet.",
};
