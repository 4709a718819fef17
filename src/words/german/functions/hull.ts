import type { Catalogue } from "../../catalogue";

/** Named functions of the family "Curved hull, from offsets": titles, arguments, steps, limits. */
export const hull: Catalogue = {
  "Half-breadth between measured offsets": "Halbe Breite zwischen gemessenen Aufmaßen",
  "Half-breadth at one point. The grid must reach past the tube on all sides and lie on the hull there; a 0 or a gap under the tube is refused, not bridged. Between the offsets the surface is a cubic spline both ways, not-a-knot at its ends; spacing should not pass half of the diameter.":
    "Halbe Breite an einem Punkt. Das Raster muss das Rohr auf allen Seiten überragen und dort auf dem Rumpf liegen; eine 0 oder Lücke unter dem Rohr wird abgelehnt, nicht überbrückt. Zwischen den Aufmaßen ist die Fläche in beide Richtungen ein kubischer Spline, am Ende ohne eigenen Knoten; der Abstand sollte die Hälfte des Durchmessers nicht überschreiten.",
  stations: "Stationen",
  "where offsets were measured, rising forward": "wo Aufmaße genommen wurden, nach vorn steigend",
  heights: "Höhen",
  "where offsets were measured, rising up": "wo Aufmaße genommen wurden, nach oben steigend",
  offsets: "Aufmaße",
  "half-breadths, a row for each height and a column for each station; 0 where there is no hull":
    "halbe Breiten, eine Zeile je Höhe und eine Spalte je Station; 0, wo kein Rumpf ist",
  station: "Station",
  "tunnel axis, counted as the stations are": "Tunnelachse, gezählt wie die Stationen",
  "tunnel axis, counted as the heights are": "Tunnelachse, gezählt wie die Höhen",
  between: "dazwischen",
  "how to read between the offsets": "wie zwischen den Aufmaßen gelesen wird",
  "read from the surface at the axis": "an der Achse von der Fläche abgelesen",
  "Entrance angle between measured offsets": "Einlaufwinkel zwischen gemessenen Aufmaßen",
  "Angle of the waterline at one point. The grid must reach past the tube on all sides and lie on the hull there; a 0 or a gap under the tube is refused, not bridged. Between the offsets the surface is a cubic spline both ways, not-a-knot at its ends; spacing should not pass half of the diameter.":
    "Winkel der Wasserlinie an einem Punkt. Das Raster muss das Rohr auf allen Seiten überragen und dort auf dem Rumpf liegen; eine 0 oder Lücke unter dem Rohr wird abgelehnt, nicht überbrückt. Zwischen den Aufmaßen ist die Fläche in beide Richtungen ein kubischer Spline, am Ende ohne eigenen Knoten; der Abstand sollte die Hälfte des Durchmessers nicht überschreiten.",
  "slope of the waterline at the axis": "Neigung der Wasserlinie an der Achse",
  "Flare between measured offsets": "Ausfall zwischen gemessenen Aufmaßen",
  "Angle of the section at one point. The grid must reach past the tube on all sides and lie on the hull there; a 0 or a gap under the tube is refused, not bridged. Between the offsets the surface is a cubic spline both ways, not-a-knot at its ends; spacing should not pass half of the diameter.":
    "Winkel des Spants an einem Punkt. Das Raster muss das Rohr auf allen Seiten überragen und dort auf dem Rumpf liegen; eine 0 oder Lücke unter dem Rohr wird abgelehnt, nicht überbrückt. Zwischen den Aufmaßen ist die Fläche in beide Richtungen ein kubischer Spline, am Ende ohne eigenen Knoten; der Abstand sollte die Hälfte des Durchmessers nicht überschreiten.",
  "slope of the section at the axis": "Neigung des Spants an der Achse",
  "Half-length of the tube to a curved side": "Halbe Länge des Rohrs bis zu einer gewölbten Seite",
  "Use the outside diameter for the cut and compare with TUNNEL.HALFLENGTH. The grid must reach past the tube on all sides and lie on the hull there; a 0 or a gap under the tube is refused, not bridged. Between the offsets the surface is a cubic spline both ways, not-a-knot at its ends; spacing should not pass half of the diameter.":
    "Nehmen Sie für den Schnitt den Außendurchmesser und vergleichen Sie mit TUNNEL.HALFLENGTH. Das Raster muss das Rohr auf allen Seiten überragen und dort auf dem Rumpf liegen; eine 0 oder Lücke unter dem Rohr wird abgelehnt, nicht überbrückt. Zwischen den Aufmaßen ist die Fläche in beide Richtungen ein kubischer Spline, am Ende ohne eigenen Knoten; der Abstand sollte die Hälfte des Durchmessers nicht überschreiten.",
  "the surface at that place of the tube": "die Fläche an dieser Stelle des Rohrs",
  "Mean half-length of the tube to a curved side": "Mittlere halbe Länge des Rohrs bis zu einer gewölbten Seite",
  "The level from which HULL.TRIM counts. The grid must reach past the tube on all sides and lie on the hull there; a 0 or a gap under the tube is refused, not bridged. Between the offsets the surface is a cubic spline both ways, not-a-knot at its ends; spacing should not pass half of the diameter.":
    "Die Höhe, von der HULL.TRIM zählt. Das Raster muss das Rohr auf allen Seiten überragen und dort auf dem Rumpf liegen; eine 0 oder Lücke unter dem Rohr wird abgelehnt, nicht überbrückt. Zwischen den Aufmaßen ist die Fläche in beide Richtungen ein kubischer Spline, am Ende ohne eigenen Knoten; der Abstand sollte die Hälfte des Durchmessers nicht überschreiten.",
  "even steps round the tube": "gleiche Schritte rund um das Rohr",
  "Cut line of the tube's end against its mean, curved side":
    "Schnittlinie des Rohrendes gegen ihr Mittel, gewölbte Seite",
  "Use the outside diameter for a template that is wrapped around the tube; compare with TUNNEL.TRIM. The grid must reach past the tube on all sides and lie on the hull there; a 0 or a gap under the tube is refused, not bridged. Between the offsets the surface is a cubic spline both ways, not-a-knot at its ends; spacing should not pass half of the diameter.":
    "Nehmen Sie für eine Schablone, die um das Rohr gewickelt wird, den Außendurchmesser; vergleichen Sie mit TUNNEL.TRIM. Das Raster muss das Rohr auf allen Seiten überragen und dort auf dem Rumpf liegen; eine 0 oder Lücke unter dem Rohr wird abgelehnt, nicht überbrückt. Zwischen den Aufmaßen ist die Fläche in beide Richtungen ein kubischer Spline, am Ende ohne eigenen Knoten; der Abstand sollte die Hälfte des Durchmessers nicht überschreiten.",
  "mean round the tube": "Mittel rund um das Rohr",
  "Length of tube to order for a curved side": "Rohrlänge zum Bestellen bei gewölbter Seite",
  "Use the outside diameter; compare with TUNNEL.STOCK. The tube stands square to the centreplane. The grid must reach past the tube on all sides and lie on the hull there; a 0 or a gap under the tube is refused, not bridged. Between the offsets the surface is a cubic spline both ways, not-a-knot at its ends; spacing should not pass half of the diameter.":
    "Nehmen Sie den Außendurchmesser; vergleichen Sie mit TUNNEL.STOCK. Das Rohr steht rechtwinklig zu Mitte Schiff. Das Raster muss das Rohr auf allen Seiten überragen und dort auf dem Rumpf liegen; eine 0 oder Lücke unter dem Rohr wird abgelehnt, nicht überbrückt. Zwischen den Aufmaßen ist die Fläche in beide Richtungen ein kubischer Spline, am Ende ohne eigenen Knoten; der Abstand sollte die Hälfte des Durchmessers nicht überschreiten.",
  "the longest line on the tube": "die längste Linie am Rohr",
  "both sides": "beide Seiten",
  "Length of the hole's edge on a curved side": "Länge des Lochrands auf einer gewölbten Seite",
  "Use the outside diameter; compare with TUNNEL.HOLEEDGE. The grid must reach past the tube on all sides and lie on the hull there; a 0 or a gap under the tube is refused, not bridged. Between the offsets the surface is a cubic spline both ways, not-a-knot at its ends; spacing should not pass half of the diameter.":
    "Nehmen Sie den Außendurchmesser; vergleichen Sie mit TUNNEL.HOLEEDGE. Das Raster muss das Rohr auf allen Seiten überragen und dort auf dem Rumpf liegen; eine 0 oder Lücke unter dem Rohr wird abgelehnt, nicht überbrückt. Zwischen den Aufmaßen ist die Fläche in beide Richtungen ein kubischer Spline, am Ende ohne eigenen Knoten; der Abstand sollte die Hälfte des Durchmessers nicht überschreiten.",
  "Area of the hole on a curved side": "Fläche des Lochs auf einer gewölbten Seite",
  "Use the outside diameter; compare with TUNNEL.HOLEAREA. The grid must reach past the tube on all sides and lie on the hull there; a 0 or a gap under the tube is refused, not bridged. Between the offsets the surface is a cubic spline both ways, not-a-knot at its ends; spacing should not pass half of the diameter.":
    "Nehmen Sie den Außendurchmesser; vergleichen Sie mit TUNNEL.HOLEAREA. Das Raster muss das Rohr auf allen Seiten überragen und dort auf dem Rumpf liegen; eine 0 oder Lücke unter dem Rohr wird abgelehnt, nicht überbrückt. Zwischen den Aufmaßen ist die Fläche in beide Richtungen ein kubischer Spline, am Ende ohne eigenen Knoten; der Abstand sollte die Hälfte des Durchmessers nicht überschreiten.",
  "in square metres": "in Quadratmetern",
  "Strip of aft wall seen from ahead, curved side": "Streifen der Achterwand von vorn gesehen, gewölbte Seite",
  "Use the inside diameter; compare with TUNNEL.BACKFACE. The strip should not be seen: common practice, no source. The grid must reach past the tube on all sides and lie on the hull there; a 0 or a gap under the tube is refused, not bridged. Between the offsets the surface is a cubic spline both ways, not-a-knot at its ends; spacing should not pass half of the diameter.":
    "Nehmen Sie den Innendurchmesser; vergleichen Sie mit TUNNEL.BACKFACE. Der Streifen sollte nicht zu sehen sein: übliche Praxis, ohne Quelle. Das Raster muss das Rohr auf allen Seiten überragen und dort auf dem Rumpf liegen; eine 0 oder Lücke unter dem Rohr wird abgelehnt, nicht überbrückt. Zwischen den Aufmaßen ist die Fläche in beide Richtungen ein kubischer Spline, am Ende ohne eigenen Knoten; der Abstand sollte die Hälfte des Durchmessers nicht überschreiten.",
  "greatest half-length aft less the one straight ahead of it": "größte halbe Länge achtern weniger der genau davor",
  "Greatest departure of a curved side from a flat one": "Größte Abweichung einer gewölbten Seite von einer ebenen",
  "By how much the flat-side formulas err at worst on this tube. The grid must reach past the tube on all sides and lie on the hull there; a 0 or a gap under the tube is refused, not bridged. Between the offsets the surface is a cubic spline both ways, not-a-knot at its ends; spacing should not pass half of the diameter.":
    "Um wie viel die Formeln der ebenen Seite an diesem Rohr höchstens irren. Das Raster muss das Rohr auf allen Seiten überragen und dort auf dem Rumpf liegen; eine 0 oder Lücke unter dem Rohr wird abgelehnt, nicht überbrückt. Zwischen den Aufmaßen ist die Fläche in beide Richtungen ein kubischer Spline, am Ende ohne eigenen Knoten; der Abstand sollte die Hälfte des Durchmessers nicht überschreiten.",
  "skin against the flat side through the axis, on the tube": "Haut gegen die ebene Seite durch die Achse, am Rohr",
  "Water carried in the tunnel of a curved hull": "Wasser, das der Tunnel eines gewölbten Rumpfs mitführt",
  "Use the inside diameter; compare with TUNNEL.WATER. Buoyancy lost, not cargo: count it once. The grid must reach past the tube on all sides and lie on the hull there; a 0 or a gap under the tube is refused, not bridged. Between the offsets the surface is a cubic spline both ways, not-a-knot at its ends; spacing should not pass half of the diameter.":
    "Nehmen Sie den Innendurchmesser; vergleichen Sie mit TUNNEL.WATER. Verlorener Auftrieb, keine Ladung: Zählen Sie es einmal. Das Raster muss das Rohr auf allen Seiten überragen und dort auf dem Rumpf liegen; eine 0 oder Lücke unter dem Rohr wird abgelehnt, nicht überbrückt. Zwischen den Aufmaßen ist die Fläche in beide Richtungen ein kubischer Spline, am Ende ohne eigenen Knoten; der Abstand sollte die Hälfte des Durchmessers nicht überschreiten.",
  "space from skin to skin": "Raum von Haut zu Haut",
};
