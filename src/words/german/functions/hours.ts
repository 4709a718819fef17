import type { Catalogue } from "../../catalogue";

/** Named functions of the family "Hours and price": titles, arguments, steps, limits. */
export const hours: Catalogue = {
  "Mean of a three-point estimate": "Mittel einer Dreipunktschätzung",
  "Sum the means, not the likely values: those add up too low where a line can go more wrong than right.":
    "Zählen Sie die Mittel zusammen, nicht die wahrscheinlichen Werte: Diese ergeben zu wenig, wo ein Posten eher schief- als gutgehen kann.",
  low: "niedrig",
  "if all goes well": "wenn alles gut geht",
  likely: "wahrscheinlich",
  "most likely": "am wahrscheinlichsten",
  high: "hoch",
  "if all goes badly": "wenn alles schlecht geht",
  "likely: {likely} h does not lie between low {low} h and high {high} h":
    "wahrscheinlich: {likely} h liegt nicht zwischen niedrig {low} h und hoch {high} h",
  "the likely value counts four times": "der wahrscheinliche Wert zählt viermal",
  "Spread of a three-point estimate": "Streuung einer Dreipunktschätzung",
  "A standard deviation. A simulation with the same three numbers gives a slightly larger one.":
    "Eine Standardabweichung. Eine Simulation mit denselben drei Zahlen gibt eine etwas größere.",
  "three standard deviations on each side": "drei Standardabweichungen auf jeder Seite",
  "Hours that hold in a share of cases": "Stunden, die in einem Anteil der Fälle reichen",
  "Sums of many lines, which come out nearly normal; a single lopsided line does not. A low share of a wide spread may fall below 0: then the estimate is too rough for it.":
    "Summen vieler Posten, die fast normal ausfallen; ein einzelner schiefer Posten tut es nicht. Ein kleiner Anteil bei weiter Streuung kann unter 0 fallen: Dann ist die Schätzung dafür zu grob.",
  mean: "Mittel",
  "mean of the sum": "Mittel der Summe",
  spread: "Streuung",
  "standard deviation of the sum": "Standardabweichung der Summe",
  "share of cases in which they are enough": "Anteil der Fälle, in denen sie reichen",
  "coefficient of the middle's reach on each side of a half":
    "Koeffizient für die Reichweite der Mitte beiderseits der Hälfte",
  "coefficient of the middle: its reach squared": "Koeffizient der Mitte: ihre Reichweite im Quadrat",
  "coefficient of the tail: where its variable is 0": "Koeffizient des Endes: wo seine Veränderliche 0 ist",
  "coefficient of the middle, above the line": "Koeffizient der Mitte, über dem Strich",
  "coefficient of the middle, below the line": "Koeffizient der Mitte, unter dem Strich",
  "coefficient of the tail, above the line": "Koeffizient des Endes, über dem Strich",
  "coefficient of the tail, below the line": "Koeffizient des Endes, unter dem Strich",
  "distance from the middle": "Abstand von der Mitte",
  "variable of the middle": "Veränderliche der Mitte",
  "variable of the tail": "Veränderliche des Endes",
  "middle, above the line": "Mitte, über dem Strich",
  "middle, below the line": "Mitte, unter dem Strich",
  "tail, above the line": "Ende, über dem Strich",
  "tail, below the line": "Ende, unter dem Strich",
  "standard normal quantile; the low tail mirrors the high one":
    "Quantil der Standardnormalverteilung; das niedrige Ende spiegelt das hohe",
  "so many spreads from the mean": "so viele Streuungen vom Mittel",
  "Spread of a sum of lines": "Streuung einer Summe von Posten",
  "One correlation for every pair. Poor access moves all labour lines together: left at 0, nine equal lines look a third narrower than at 0.2. The default is a choice, not a measurement.":
    "Eine Korrelation für jedes Paar. Schlechter Zugang bewegt alle Lohnposten gemeinsam: Bei 0 belassen, sehen neun gleiche Posten um ein Drittel enger aus als bei 0,2. Der Vorgabewert ist eine Wahl, keine Messung.",
  spreads: "Streuungen",
  "spread of each line": "Streuung jedes Postens",
  common: "gemeinsam",
  "how far all lines move together: 0 not at all, 1 fully": "wie weit alle Posten zusammen gehen: 0 gar nicht, 1 ganz",
  "lines by themselves": "Posten für sich",
  "lines in step": "Posten im Gleichschritt",
  "variance of a sum whose every pair has this correlation":
    "Varianz einer Summe, deren jedes Paar diese Korrelation hat",
  "Margin from mark-up": "Marge aus Aufschlag",
  "Shares, not per cent: 0.25 is a quarter.": "Anteile, keine Prozente: 0,25 ist ein Viertel.",
  markup: "Aufschlag",
  "profit over cost": "Gewinn zu Kosten",
  "profit over price, not over cost": "Gewinn zum Preis, nicht zu den Kosten",
  "Mark-up from margin": "Aufschlag aus Marge",
  "Shares, not per cent: a margin of a third takes a mark-up of a half.":
    "Anteile, keine Prozente: Eine Marge von einem Drittel verlangt einen Aufschlag von einer Hälfte.",
  margin: "Marge",
  "profit over price": "Gewinn zum Preis",
  "profit over cost, not over price": "Gewinn zu den Kosten, nicht zum Preis",
};
