import type { Catalogue } from "../../catalogue";

/** Named functions of the family "Survey": titles, arguments, steps, limits. */
export const survey: Catalogue = {
  "A point fixed by two tapes: how far along the line of the marks":
    "Ein Punkt aus zwei Bandmaßen: wie weit längs der Linie der Marken",
  "Marks that can be found on both sides of the skin, tapes held in one plane. Below 0 the foot lies on the far side of the first mark. Tapes that cannot meet also give a number here: SURVEY.AWAY refuses them.":
    "Marken, die auf beiden Seiten der Haut zu finden sind, Bänder in einer Ebene gehalten. Unter 0 liegt der Fußpunkt jenseits der ersten Marke. Bänder, die sich nicht treffen können, geben hier auch eine Zahl: SURVEY.AWAY lehnt sie ab.",
  "from first": "von der ersten",
  "tape from the first mark to the point": "Band von der ersten Marke zum Punkt",
  "from second": "von der zweiten",
  "tape from the second mark to the point": "Band von der zweiten Marke zum Punkt",
  base: "Basis",
  "distance between the two marks": "Abstand der beiden Marken",
  "foot of the point on the line, from the first mark towards the second":
    "Fußpunkt auf der Linie, von der ersten Marke zur zweiten hin",
  "A point fixed by two tapes: how far off the line of the marks":
    "Ein Punkt aus zwei Bandmaßen: wie weit von der Linie der Marken",
  "Marks that can be found on both sides of the skin, tapes held in one plane. A flat triangle (point close to the line) magnifies every error of the tapes: choose marks so that the tapes cross at a wide angle.":
    "Marken, die auf beiden Seiten der Haut zu finden sind, Bänder in einer Ebene gehalten. Ein flaches Dreieck (Punkt nahe der Linie) vergrößert jeden Fehler der Bänder: Wählen Sie Marken so, dass sich die Bänder in weitem Winkel kreuzen.",
  "Before a hole is drilled the point found inside must agree with the one found outside; look what lies behind it. Local codes and licensed practice decide.":
    "Bevor ein Loch gebohrt wird, muss der innen gefundene Punkt mit dem außen gefundenen übereinstimmen; sehen Sie nach, was dahinter liegt. Maßgebend sind örtliche Regeln und zugelassene Fachleute.",
  "from first {fromFirst} mm and from second {fromSecond} mm do not meet over a base of {base} mm; measure again":
    "{fromFirst} mm von der ersten und {fromSecond} mm von der zweiten treffen sich nicht über einer Basis von {base} mm; messen Sie noch einmal",
  "foot of the point on the line, from the first mark": "Fußpunkt auf der Linie, von der ersten Marke",
  "height of the triangle": "Höhe des Dreiecks",
  "How far a tube stands out of square": "Wie weit ein Rohr aus dem Winkel steht",
  "Both measures from the same reference, such as a line square to the keel. The sign follows the difference.":
    "Beide Maße von demselben Bezug, etwa einer Linie rechtwinklig zum Kiel. Das Vorzeichen folgt dem Unterschied.",
  difference: "Unterschied",
  "difference of two measures that should be equal": "Unterschied zweier Maße, die gleich sein sollten",
  span: "Spannweite",
  "distance between the places measured": "Abstand der gemessenen Stellen",
  "slope of the tube's axis": "Neigung der Rohrachse",
  "Entrance or flare of the skin from two offsets": "Einlaufwinkel oder Ausfall der Haut aus zwei Aufmaßen",
  "Offsets about a tunnel diameter apart, either side of its axis: along the waterline for entrance, up the section for flare. Between them the skin is taken as flat; SHELL.BULGE shows whether it is.":
    "Aufmaße etwa einen Tunneldurchmesser auseinander, beiderseits der Achse: längs der Wasserlinie für den Einlaufwinkel, am Spant für den Ausfall. Dazwischen gilt die Haut als eben; SHELL.BULGE zeigt, ob sie es ist.",
  first: "erstes",
  "half-breadth aft (for entrance) or above (for flare)":
    "halbe Breite achtern (für den Einlaufwinkel) oder oben (für den Ausfall)",
  second: "zweites",
  "half-breadth forward, or below": "halbe Breite vorn oder unten",
  spacing: "Abstand",
  "distance between the two offsets": "Abstand der beiden Aufmaße",
  "slope of the chord between the two offsets": "Neigung der Sehne zwischen den beiden Aufmaßen",
  "Rake of the stem that goes with entrance and flare": "Stevenfall, der zu Einlaufwinkel und Ausfall gehört",
  "On a flat bow entrance, flare and stem rake hang together. A measured rake that is far from this means that the side is not flat or an angle is wrong. Above 0 the stem leans forward going up.":
    "An einem ebenen Bug hängen Einlaufwinkel, Ausfall und Stevenfall zusammen. Ein gemessener Fall, der weit davon abliegt, heißt, dass die Seite nicht eben oder ein Winkel falsch ist. Über 0 fällt der Steven nach oben nach vorn.",
  "where the plane of the side meets the centreplane, from vertical":
    "wo die Ebene der Seite Mitte Schiff trifft, gegen die Senkrechte",
  "How far the skin stands out of a straight line between two offsets":
    "Wie weit die Haut aus einer geraden Linie zwischen zwei Aufmaßen steht",
  "Take the three at top, axis and bottom of the tunnel, then forward, axis and aft. Above 0 the skin is round there, below 0 hollow. The tunnel's cut lines for a flat skin are wrong by about as much: with more than the joint can fill, mark the cut from the hull itself.":
    "Nehmen Sie die drei oben, an der Achse und unten am Tunnel, dann vorn, an der Achse und achtern. Über 0 ist die Haut dort rund, unter 0 hohl. Die Schnittlinien für eine ebene Haut sind um etwa ebenso viel falsch: Ist es mehr, als die Verbindung füllen kann, reißen Sie den Schnitt am Rumpf selbst an.",
  "half-breadth at one end": "halbe Breite an einem Ende",
  middle: "Mitte",
  "half-breadth half way": "halbe Breite auf halbem Weg",
  last: "letztes",
  "half-breadth at the other end": "halbe Breite am anderen Ende",
  "against the middle of the chord": "gegen die Mitte der Sehne",
};
