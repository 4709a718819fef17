import type { Catalogue } from "../../catalogue";

/** Named functions of the family "General": titles, arguments, steps, limits. */
export const general: Catalogue = {
  "The same quantity in another unit": "Dieselbe Größe in einer anderen Einheit",
  "Unit symbols of OpenFormula, capital and small letters as there, and the unit texts of the rows. h is the hour, not the horsepower; oz is a volume, ozm and lbm are masses, lbf and kgf are forces; a temperature is taken as a reading, not as a difference.":
    "Einheitenzeichen von OpenFormula, große und kleine Buchstaben wie dort, und die Einheiten der Zeilen. h ist die Stunde, nicht die Pferdestärke; oz ist ein Volumen, ozm und lbm sind Massen, lbf und kgf Kräfte; eine Temperatur gilt als Ablesung, nicht als Unterschied.",
  "number in the first unit": "Zahl in der ersten Einheit",
  "unit it is in": "Einheit, in der sie steht",
  "unit it is wanted in": "Einheit, in der sie gewünscht ist",
  "factors and zero points of the units library": "Faktoren und Nullpunkte der Einheitenbibliothek",
  "Straight-line reading of a table": "Tabelle mit geraden Linien gelesen",
  "Only between the first and the last row: outside there is no answer. A bent curve read by straight lines is cut short; give it closer rows where it bends.":
    "Nur zwischen der ersten und der letzten Zeile: Außerhalb gibt es keine Antwort. Eine gekrümmte Kurve, mit geraden Linien gelesen, wird abgeschnitten; geben Sie ihr engere Zeilen, wo sie sich krümmt.",
  x: "x",
  "where the table is read": "wo die Tabelle gelesen wird",
  xs: "xs",
  "first column, rising": "erste Spalte, steigend",
  ys: "ys",
  "second column, as long": "zweite Spalte, gleich lang",
  "straight line between the two nearest rows": "gerade Linie zwischen den beiden nächsten Zeilen",
};
