// Past 150 lines: one text a line.
import type { Catalogue } from "../catalogue";

/** Findings, ticks and the record. */
export const audit: Catalogue = {
  Audit: "Prüfung",
  Close: "Schließen",
  "Print record": "Protokoll drucken",
  "Save record": "Protokoll speichern",
  "The notebook could not be audited: {0}. Change something, or load the page again.":
    "Das Heft konnte nicht geprüft werden: {0}. Ändern Sie etwas oder laden Sie die Seite neu.",
  "Auditing …": "Prüfung läuft …",
  "{0}, {1}, {2} open in {3} formulas; {4} accepted.": "{0}, {1}, {2} offen in {3} Formeln; {4} angenommen.",
  "No errors": "Keine Fehler",
  "{0} of {1} filled cells reviewed{2}.": "{0} von {1} gefüllten Zellen durchgesehen{2}.",
  "; {0} stale": "; {0} veraltet",
  "tick / ticks": { one: "{0} Haken", other: "{0} Haken" },
  "Checking what changed …": "Geändertes wird geprüft …",
  "Which findings": "Welche Befunde",
  Pages: "Seiten",
  "All pages": "Alle Seiten",
  "This page": "Diese Seite",
  Level: "Stufe",
  Any: "Alle",
  Check: "Nachweis",
  "Nothing found.": "Nichts gefunden.",
  "Nothing open here.": "Hier ist nichts offen.",
  "accepted finding / accepted findings": { one: "{0} angenommener Befund", other: "{0} angenommene Befunde" },
  "the part that audits could not be loaded": "der prüfende Teil konnte nicht geladen werden",
  "and {0} more": "und {0} weitere",
  "Accepted by {0} on {1}: {2}": "Angenommen von {0} am {1}: {2}",
  "Withdraw acceptance": "Annahme zurückziehen",
  "Accept with reason …": "Mit Begründung annehmen …",
  "row {0}": "Zeile {0}",
  "{0} accepted at {1}": "{0} angenommen bei {1}",
  "Why it may stand": "Warum es so bleiben darf",
  Accept: "Annehmen",
  "Leave it open": "Offen lassen",
  "acceptance at {0} withdrawn": "Annahme bei {0} zurückgezogen",
  "a cell": "einer Zelle",
  "The audit's record saved as {0}.": "Das Prüfprotokoll ist als {0} gespeichert.",
  "Take tick of {0} back": "Haken für {0} zurücknehmen",
  "Tick {0}{1}": "Haken setzen: {0}{1}",
  " again": " (erneut)",
  "Review of the selected cell": "Durchsicht der gewählten Zelle",
  ", with {0}": ", mit {0}",
  "Not reviewed yet.": "Noch nicht durchgesehen.",
  "this cell": "diese Zelle",
  "this row": "diese Zeile",
  "this page": "diese Seite",
  "Signed {0}.": "Gezeichnet {0}.",
  "Another name …": "Anderer Name …",
  "Your name is asked for with the first tick.": "Nach Ihrem Namen wird beim ersten Haken gefragt.",
  "Tick {0} again": "Haken für {0} erneut setzen",
  "Tick again": "Erneut abhaken",
  "Take the tick of {0} back": "Haken für {0} zurücknehmen",
  "Take back": "Zurücknehmen",
  ", {0} stale": ", {0} veraltet",
  "{0}, whole page": "{0}, ganze Seite",
  "ticked by {0} on {1}, no longer there": "abgehakt von {0} am {1}, nicht mehr vorhanden",
  "ticked by {0} on {1}, stale: something behind it has changed":
    "abgehakt von {0} am {1}, veraltet: dahinter hat sich etwas geändert",
  "reviewed by {0} on {1}": "durchgesehen von {0} am {1}",
  "review of {0}": "Durchsicht von {0}",
  "The row has no key by which it could be ticked; tick its cells.":
    "Die Zeile hat keinen Schlüssel, unter dem sie abgehakt werden könnte; haken Sie ihre Zellen ab.",
  "tick of {0} taken back": "Haken für {0} zurückgenommen",
  Errors: "Fehler",
  Warnings: "Warnungen",
  error: "Fehler",
  warning: "Warnung",
  "The reason": "Die Begründung",
  "A finding is accepted with a reason; say why it may stand.":
    "Ein Befund wird mit Begründung angenommen; sagen Sie, warum es so bleiben darf.",
  "A finding is accepted by a person; give a name.":
    "Ein Befund wird von einem Menschen angenommen; geben Sie einen Namen.",
  "This version of the calculation engine does not show how it reads a formula. Checks that look at single parts of formulas were left out or are not whole: {0}.":
    "Diese Fassung des Rechenwerks zeigt nicht, wie es eine Formel liest. Prüfungen, die einzelne Formelteile ansehen, entfielen oder sind nicht vollständig: {0}.",
  "There is no {0} to review; name a cell, a row, or a page as in Supply.*.":
    "Es gibt kein {0} zum Durchsehen; nennen Sie eine Zelle, eine Zeile oder eine Seite wie in Supply.*.",
  "A review needs the name of the person who made it.":
    "Eine Durchsicht braucht den Namen dessen, der sie gemacht hat.",
  "was an input, is now calculated{0}: {1}": "war eine Eingabe, wird jetzt gerechnet{0}: {1}",
  "was calculated ({0}), is now typed{1}": "wurde gerechnet ({0}), ist jetzt eingegeben{1}",
  "formula was {0}, is {1}{2}": "die Formel war {0}, ist {1}{2}",
  "choices or plausible limits": "Auswahl oder plausible Grenzen",
  "{0}: was {1}, is {2}": "{0}: war {1}, ist {2}",
  "this page was added": "diese Seite kam dazu",
  "the page was called {0}": "die Seite hieß {0}",
  "this row was added": "diese Zeile kam dazu",
  "the row {0} was removed": "die Zeile {0} wurde entfernt",
  "a row that differs from the notebook as it was shipped":
    "eine Zeile, die vom Heft abweicht, wie es ausgeliefert wurde",
  "the page {0} was removed": "die Seite {0} wurde entfernt",
  "counted as 0 or as nothing": "als 0 oder gar nicht gezählt",
  "taken as {0} by default": "nach Vorgabe als {0} angenommen",
  "shown as 0": "als 0 gezeigt",
  "{0} is blank and {1}": "{0} ist leer und wird {1}",
  "{0}; fill it in": "{0}; füllen Sie es aus",
  "a formula that reads a blank cell without asking whether it is filled":
    "eine Formel, die eine leere Zelle liest, ohne zu fragen, ob sie gefüllt ist",
  "an option whose formula differs from that of its neighbours in the row":
    "eine Variante, deren Formel von der ihrer Nachbarn in der Zeile abweicht",
  "{0} is another formula than {1} has ({2}); make them equal or say why they differ":
    "{0} ist eine andere Formel, als {1} hat ({2}); machen Sie sie gleich oder sagen Sie, warum sie abweichen",
  "calculated here, typed in the other options": "hier gerechnet, in den anderen Varianten eingegeben",
  "{0} is typed where the other options calculate ({1}); put the formula back":
    "{0} ist eingegeben, wo die anderen Varianten rechnen ({1}); setzen Sie die Formel wieder ein",
  "a result that was typed over, while the other options calculate it":
    "ein überschriebenes Ergebnis, während die anderen Varianten es rechnen",
  "an input outside the published range of a named function":
    "eine Eingabe außerhalb des veröffentlichten Bereichs einer benannten Funktion",
  "a formula whose result is an error": "eine Formel, deren Ergebnis ein Fehler ist",
  "at {0}": "bei {0}",
  "a number outside the plausible limits of its row": "eine Zahl außerhalb der plausiblen Grenzen ihrer Zeile",
  "{0}{1} is outside the plausible {2} to {3}{4}; measure again or widen the limits":
    "{0}{1} liegt außerhalb der plausiblen {2} bis {3}{4}; messen Sie noch einmal oder erweitern Sie die Grenzen",
  "a link to a cell that is itself a mere link": "ein Verweis auf eine Zelle, die selbst nur ein Verweis ist",
  "a link to {0}, which is itself a link ({1}); point to where the value is worked out":
    "ein Verweis auf {0}, das selbst ein Verweis ist ({1}); verweisen Sie dorthin, wo der Wert gerechnet wird",
  "a formula that is too long or too deeply nested to follow":
    "eine Formel, die zu lang oder zu tief verschachtelt ist, um ihr zu folgen",
  "{0} letters long": "{0} Zeichen lang",
  "{0} calls deep": "{0} Aufrufe tief",
  "the formula is {0}; give its parts rows of their own": "die Formel ist {0}; geben Sie ihren Teilen eigene Zeilen",
  "the example gives {0} and says {1}; mend the formula or the example":
    "das Beispiel ergibt {0} und sagt {1}; bringen Sie die Formel oder das Beispiel in Ordnung",
  "the example is refused: {0}": "das Beispiel wird abgelehnt: {0}",
  '{0}: no source is named; write where it comes from, or "common practice, no source: …"':
    "{0}: keine Quelle genannt; schreiben Sie, woher es stammt, oder „common practice, no source: …“",
  "{0} has no example that it is held to; add a row example":
    "{0} hat kein Beispiel, an dem sie gemessen wird; fügen Sie eine Zeile example hinzu",
  "a function of the notebook's own with a mistake, an example that fails, units that do not fit, or no source":
    "eine eigene Funktion des Hefts mit einem Fehler, einem Beispiel, das nicht stimmt, unpassenden Einheiten oder ohne Quelle",
  " to ": " bis ",
  "{0} {1} beside {2} {3} in the other options; was it meant in another unit?":
    "{0} {1} neben {2} {3} in den anderen Varianten; war es in einer anderen Einheit gemeint?",
  "an input that is a hundred times larger or smaller than in the other options":
    "eine Eingabe, die hundertmal größer oder kleiner ist als in den anderen Varianten",
  "the range stops before {0}, which looks like one more of its block":
    "der Bereich endet vor {0}, das wie ein weiteres seines Blocks aussieht",
  "one range covers rows {0}, another {1}; they need the same rows":
    "ein Bereich umfasst die Zeilen {0}, ein anderer {1}; sie brauchen dieselben Zeilen",
  "a range that ends before its block does, or covers other rows than its fellow":
    "ein Bereich, der vor seinem Block endet oder andere Zeilen umfasst als sein Gegenstück",
  "a review of something that has changed since": "eine Durchsicht von etwas, das sich seitdem geändert hat",
  "{0} was reviewed by {1} on {2} and is no longer there; take the tick back":
    "{0} wurde von {1} am {2} durchgesehen und ist nicht mehr da; nehmen Sie den Haken zurück",
  "{0} was reviewed by {1} on {2}; a formula, a function or an input behind it has changed since":
    "{0} wurde von {1} am {2} durchgesehen; eine Formel, eine Funktion oder eine Eingabe dahinter hat sich seitdem geändert",
  "an error that is replaced by a number": "ein Fehler, der durch eine Zahl ersetzt wird",
  "an error in {0} would look like a result; let it show, or put words in its place":
    "ein Fehler in {0} sähe wie ein Ergebnis aus; lassen Sie ihn sehen oder setzen Sie Worte an seine Stelle",
  "{0} {1} where a number is due; type a number with a decimal point":
    "{0} {1}, wo eine Zahl hingehört; geben Sie eine Zahl mit Dezimalpunkt ein",
  "is text": "ist Text",
  "are texts": "sind Texte",
  '"{0}" is text in a row of numbers; type it with a decimal point and without blanks or signs':
    "„{0}“ ist Text in einer Zeile von Zahlen; geben Sie es mit Dezimalpunkt und ohne Leerzeichen oder Zeichen ein",
  "text that stands where a number is due": "Text, der steht, wo eine Zahl hingehört",
  "a number typed inside a formula instead of standing in a row with unit and source":
    "eine in eine Formel getippte Zahl, statt in einer Zeile mit Einheit und Quelle",
  "{0} {1} typed inside the formula; give it a row with unit and source":
    "{0} {1} in die Formel getippt; geben Sie ihr eine Zeile mit Einheit und Quelle",
  is: "ist",
  are: "sind",
  "parts of a formula, arguments of a named function, or a result, whose units do not fit":
    "Teile einer Formel, Argumente einer benannten Funktion oder ein Ergebnis, deren Einheiten nicht passen",
  "a row whose unit text is not known": "eine Zeile, deren Einheit nicht bekannt ist",
  'unit "{0}" is not known; write it as in mm, m2, kg/m3, N m, or leave it empty for text':
    "die Einheit „{0}“ ist nicht bekannt; schreiben Sie sie wie in mm, m2, kg/m3, N m oder lassen Sie sie bei Text leer",
  "an input that no formula uses": "eine Eingabe, die keine Formel benutzt",
  "no formula uses {0}; use it, or say in its basis what it is kept for":
    "keine Formel benutzt {0}; benutzen Sie es oder sagen Sie in seiner Basis, wozu es dient",
  "a function whose result changes by itself": "eine Funktion, deren Ergebnis sich von selbst ändert",
  "{0} gives another result each time; type the value or the date instead":
    "{0} gibt jedes Mal ein anderes Ergebnis; geben Sie stattdessen den Wert oder das Datum ein",
  "the row has no unit, the formula gives {0}": "die Zeile hat keine Einheit, die Formel ergibt {0}",
  "the row says {0}, the formula gives {1}{2}": "die Zeile sagt {0}, die Formel ergibt {1}{2}",
  "{0}, branches": "{0}, Zweige",
  "a part": "ein Teil",
  " (factor {0})": " (Faktor {0})",
  "{0}: {1} is typed without a unit beside {2}; give it a row with its unit":
    "{0}: {1} ist ohne Einheit neben {2} eingegeben; geben Sie ihm eine Zeile mit seiner Einheit",
  "{0}: {1} is in {2}, {3} in {4}{5}; they need one unit":
    "{0}: {1} ist in {2}, {3} in {4}{5}; sie brauchen eine Einheit",
  "{0}: wants {1}, {2} is in {3}{4}": "{0}: verlangt {1}, {2} ist in {3}{4}",
  "{0}: {1} is a temperature in {2}; subtract a reference temperature first":
    "{0}: {1} ist eine Temperatur in {2}; ziehen Sie zuerst eine Bezugstemperatur ab",
  "+: {0} and {1} are both temperatures in {2}; they have no sum":
    "+: {0} und {1} sind beide Temperaturen in {2}; sie haben keine Summe",
  "^: the exponent of {0} ({1}) is not a typed number, so the result has no unit":
    "^: Der Exponent von {0} ({1}) ist keine eingegebene Zahl, darum hat das Ergebnis keine Einheit",
  adapted: "angepasst",
  "blank reference": "leere Zelle gelesen",
  differs: "abweichende Formel",
  "error value": "Fehlerwert",
  implausible: "unplausibel",
  "link chain": "Verweiskette",
  "long formula": "lange Formel",
  "Whole page": "Ganze Seite",
  "tick stale": "Häkchen veraltet",
  reviewed: "durchgesehen",
  "own function": "eigene Funktion",
  "scale slip": "Größenordnung",
  "short range": "zu kurzer Bereich",
  "stale review": "veraltete Durchsicht",
  "swallowed error": "verdeckter Fehler",
  "text as number": "Text statt Zahl",
  "typed number": "getippte Zahl",
  "unused input": "unbenutzte Eingabe",
  volatile: "wechselndes Ergebnis",
  "unknown unit": "unbekannte Einheit",
  "typed over": "überschrieben",
  "outside range": "außerhalb des Bereichs",
  "outside limits": "außerhalb der Grenzen",
  "no longer there": "nicht mehr vorhanden",
  "stale: something behind it has changed": "veraltet: dahinter hat sich etwas geändert",
  stands: "gilt",
  "{0} formulas, {1} open findings, {2} accepted, {3} reviews.":
    "{0} Formeln, {1} offene Befunde, {2} angenommen, {3} Durchsichten.",
  Place: "Stelle",
  Rule: "Regel",
  Finding: "Befund",
  Accepted: "Angenommen",
  "Still open": "Noch offen",
  Reason: "Begründung",
  By: "Von",
  On: "Am",
  Reviewed: "Durchgesehen",
  State: "Stand",
  "Checked against the rules of this program. Local codes and licensed practice decide.":
    "Geprüft nach den Regeln dieses Programms. Maßgebend sind örtliche Regeln und zugelassene Fachleute.",
  "Revision {0}": "Revision {0}",
  "Audit record: {0}": "Prüfprotokoll: {0}",
  "Nothing.": "Nichts.",
  none: "keine",
  "{0}, audit record, revision {1}, {2}": "{0}, Prüfprotokoll, Revision {1}, {2}",
  "Audit record, revision {0}, {1}": "Prüfprotokoll, Revision {0}, {1}",
  "Audit record": "Prüfprotokoll",
  sum: "Summe",
  "Audited by": "Geprüft von",
};
