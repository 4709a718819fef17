// Past 150 lines: one text a line.
import type { Catalogue } from "../../catalogue";

/** Named functions of the family "Tunnel: place, flow, cut": titles, arguments, steps, limits. */
export const tunnel: Catalogue = {
  "Water above the top of the tunnel": "Wasser über der Oberkante des Tunnels",
  "Still water and the trim that the axis depth was measured in: check the light condition. Below 0 the tube breaks the surface.":
    "Ruhiges Wasser und die Schwimmlage, in der die Achstiefe gemessen wurde: Prüfen Sie die leichte. Unter 0 durchbricht das Rohr die Oberfläche.",
  "axis depth": "Achstiefe",
  "tunnel axis below the still waterline; below 0 the axis is out of the water":
    "Tunnelachse unter der ruhigen Wasserlinie; unter 0 liegt die Achse über Wasser",
  "tunnel diameter": "Tunneldurchmesser",
  "the top of the tube is half a diameter above its axis":
    "die Oberkante des Rohrs liegt einen halben Durchmesser über der Achse",
  "Cover in tunnel diameters": "Überdeckung in Tunneldurchmessern",
  "Still water; pitching and heeling take some of it away. At least half a diameter, better a whole one, is a habit of the trade, not a rule.":
    "Ruhiges Wasser; Stampfen und Krängen nehmen etwas davon weg. Mindestens ein halber Durchmesser, besser ein ganzer, ist eine Gewohnheit des Gewerbes, keine Regel.",
  "water above the tube, in diameters": "Wasser über dem Rohr, in Durchmessern",
  "Axis depth that gives the cover wanted": "Achstiefe, die die gewünschte Überdeckung gibt",
  "Measure down from the waterline in the lightest trim. The tube must also stay clear of the keel line below.":
    "Messen Sie von der Wasserlinie der leichtesten Schwimmlage nach unten. Das Rohr muss auch von der Kiellinie darunter frei bleiben.",
  cover: "Überdeckung",
  "water wanted above the tube, in diameters": "gewünschtes Wasser über dem Rohr, in Durchmessern",
  "cover and the half of the tube above its axis": "Überdeckung und die Hälfte des Rohrs über der Achse",
  "Share of the tunnel's disc that is under water": "Anteil der Tunnelscheibe, der unter Wasser ist",
  "Geometry of still water alone: a propeller that is wholly under can still draw air. Beyond one radius the share stays 0 or 1.":
    "Nur Geometrie ruhigen Wassers: Ein Propeller, der ganz untergetaucht ist, kann trotzdem Luft ziehen. Jenseits eines Radius bleibt der Anteil 0 oder 1.",
  "axis depth in radii; beyond one radius the disc is all under or all out":
    "Achstiefe in Radien; jenseits eines Radius ist die Scheibe ganz unter oder ganz über Wasser",
  "disc less the segment above water": "Scheibe ohne das Segment über Wasser",
  "Thrust left when the propeller draws air (from memory)":
    "Schub, der bleibt, wenn der Propeller Luft zieht (aus dem Gedächtnis)",
  "The curve is from memory and not confirmed: no copy that prints it was found. It is for moderately loaded open propellers; a thruster at full power draws air from deeper, so 1.3 radii is a floor and not a target.":
    "Die Kurve ist aus dem Gedächtnis und nicht bestätigt: Kein Exemplar, das sie druckt, wurde gefunden. Sie gilt für mäßig belastete freie Propeller; ein Strahlruder bei voller Leistung zieht Luft aus größerer Tiefe, darum sind 1,3 Radien ein Mindestmaß und kein Ziel.",
  "tunnel axis below the still waterline": "Tunnelachse unter der ruhigen Wasserlinie",
  "depth in radii with no loss": "Tiefe in Radien ohne Verlust",
  "loss with the axis at the surface": "Verlust mit der Achse an der Oberfläche",
  "1/1.3 as the curve writes it": "1/1,3, wie die Kurve es schreibt",
  "exponent of the curve": "Exponent der Kurve",
  "axis depth in radii of the tube": "Achstiefe in Rohrradien",
  "no loss from 1.3 radii down, a curve above": "ab 1,3 Radien abwärts kein Verlust, darüber eine Kurve",
  "Edge radius at the ends of the tunnel": "Kantenradius an den Enden des Tunnels",
  "The share is of the radius: 10 % of the radius is 5 % of the diameter. More rounding costs less thrust up to 30 % of the radius.":
    "Der Anteil gilt für den Radius: 10 % des Radius sind 5 % des Durchmessers. Mehr Rundung kostet bis zu 30 % des Radius weniger Schub.",
  share: "Anteil",
  "edge radius as a share of the tunnel's radius": "Kantenradius als Anteil des Tunnelradius",
  "a share of the tunnel's radius": "ein Anteil des Tunnelradius",
  "Loss of a rounded inlet": "Verlust eines gerundeten Einlaufs",
  "A flush inlet square to the wall, in velocity heads of the tube. Other handbooks differ by half either way; a tube that stands out of the skin loses more than a sharp flush one.":
    "Ein bündiger Einlauf rechtwinklig zur Wand, in Geschwindigkeitshöhen des Rohrs. Andere Handbücher weichen um die Hälfte nach beiden Seiten ab; ein Rohr, das aus der Haut vorsteht, verliert mehr als ein scharfes bündiges.",
  "edge radius": "Kantenradius",
  "radius of the rounded edge": "Radius der gerundeten Kante",
  "edge radius in diameters": "Kantenradius in Durchmessern",
  "straight line between the published points; from 0.15 on the last one is held":
    "gerade Linie zwischen den veröffentlichten Punkten; ab 0,15 wird der letzte gehalten",
  "Entry loss against edge radius": "Einlaufverlust gegen Kantenradius",
  "edge radius as a share of the tube's diameter": "Kantenradius als Anteil des Rohrdurchmessers",
  "entry loss in velocity heads": "Einlaufverlust in Geschwindigkeitshöhen",
  "Loss of a sharp inlet that meets the skin at an angle":
    "Verlust eines scharfen Einlaufs, der schräg auf die Haut trifft",
  "Sharp edges, not under 20 degrees. Use it to see what an end that is left sharp costs; a rounded end is TUNNEL.INLET.":
    "Scharfe Kanten, nicht unter 20 Grad. Damit sehen Sie, was ein scharf gelassenes Ende kostet; ein gerundetes Ende ist TUNNEL.INLET.",
  "between the tunnel's axis and the skin; 90 is square": "zwischen Tunnelachse und Haut; 90 ist rechtwinklig",
  "loss of a square sharp entry": "Verlust eines rechtwinkligen scharfen Einlaufs",
  "factor of the cosine": "Faktor des Kosinus",
  "factor of the cosine squared": "Faktor des Kosinus im Quadrat",
  "how far from square": "wie weit vom rechten Winkel",
  "the handbook's fit, in velocity heads of the tube": "die Näherung des Handbuchs, in Geschwindigkeitshöhen des Rohrs",
  "Loss of a grid of parallel bars at one end": "Verlust eines Gitters aus parallelen Stäben an einem Ende",
  "One grid: count both ends. Clean bars in line with the flow; weed and growth multiply the loss. TUNNEL.GRILL gives about twice as much for the same open share: take the two as a range.":
    "Ein Gitter: Zählen Sie beide Enden. Saubere Stäbe in Richtung der Strömung; Kraut und Bewuchs vervielfachen den Verlust. TUNNEL.GRILL gibt bei gleichem offenem Anteil etwa das Doppelte: Nehmen Sie beide als Bereich.",
  bar: "Stab",
  "thickness of a bar across the flow": "Dicke eines Stabs quer zur Strömung",
  gap: "Spalt",
  "clear gap between bars": "lichter Abstand zwischen den Stäben",
  section: "Querschnitt",
  "section of the bars": "Querschnitt der Stäbe",
  "between the bars and the flow; 90 is square": "zwischen Stäben und Strömung; 90 ist rechtwinklig",
  "bar factor, from memory": "Stabfaktor, aus dem Gedächtnis",
  "Bar factors of a grid": "Stabfaktoren eines Gitters",
  "section of the bar, flow from the left": "Querschnitt des Stabs, Strömung von links",
  "bar factor": "Stabfaktor",
  "in velocity heads of the flow that comes to the grid": "in Geschwindigkeitshöhen der Strömung, die zum Gitter kommt",
  "Loss of a square-edged grill by its open share": "Verlust eines scharfkantigen Gitters nach seinem offenen Anteil",
  "One grill with square edges: count both ends. The high side of the range whose low side is TUNNEL.GRID.":
    "Ein Gitter mit scharfen Kanten: Zählen Sie beide Enden. Die hohe Seite des Bereichs, dessen niedrige Seite TUNNEL.GRID ist.",
  open: "offen",
  "open share of the area": "offener Anteil der Fläche",
  "factor of the closed share": "Faktor des geschlossenen Anteils",
  "in velocity heads of the flow that comes to the grill":
    "in Geschwindigkeitshöhen der Strömung, die zum Gitter kommt",
  "Friction loss along the tunnel": "Reibungsverlust längs des Tunnels",
  "Fully developed pipe flow; in a tunnel of a few diameters the flow is not, so take it as a low estimate of a small term. A Reynolds number below 4000 is refused.":
    "Voll ausgebildete Rohrströmung; in einem Tunnel von wenigen Durchmessern ist sie es nicht, nehmen Sie es also als niedrige Schätzung eines kleinen Glieds. Eine Reynoldszahl unter 4000 wird abgelehnt.",
  "length of the tube": "Länge des Rohrs",
  "speed of the water in the tube": "Geschwindigkeit des Wassers im Rohr",
  roughness: "Rauheit",
  "height of the roughness; 0 is smooth": "Höhe der Rauheit; 0 ist glatt",
  viscosity: "Zähigkeit",
  "kinematic viscosity; the default is the sea at 15 °C":
    "kinematische Zähigkeit; der Vorgabewert ist die See bei 15 °C",
  "mm in a metre": "mm in einem Meter",
  "least Reynolds number of the equation's range": "kleinste Reynoldszahl im Bereich der Gleichung",
  "largest roughness in diameters": "größte Rauheit in Durchmessern",
  "Colebrook's rough wall": "Colebrooks raue Wand",
  "Colebrook's smooth wall": "Colebrooks glatte Wand",
  "Reynolds number": "Reynoldszahl",
  "speed: {speed} m/s gives a Reynolds number of {Re}, below {turbulent}; a faster flow or a larger diameter is needed":
    "Geschwindigkeit: {speed} m/s ergibt eine Reynoldszahl von {Re}, unter {turbulent}; nötig ist eine schnellere Strömung oder ein größerer Durchmesser",
  "roughness in diameters": "Rauheit in Durchmessern",
  "roughness: {roughness} mm is more than 1/20 of the diameter {diameter} mm":
    "Rauheit: {roughness} mm ist mehr als 1/20 des Durchmessers {diameter} mm",
  "Colebrook's equation for 1/sqrt(f), by Newton's rule": "Colebrooks Gleichung für 1/sqrt(f), nach Newtons Verfahren",
  "friction factor": "Reibungsbeiwert",
  "in velocity heads of the tube": "in Geschwindigkeitshöhen des Rohrs",
  "All losses of the tunnel in velocity heads": "Alle Verluste des Tunnels in Geschwindigkeitshöhen",
  "The 1 already is the loss at the exit, whatever its edge: do not add an exit loss on top.":
    "Die 1 ist schon der Verlust am Austritt, gleich welche Kante: Rechnen Sie keinen Austrittsverlust dazu.",
  "inlet loss, from TUNNEL.INLET": "Einlaufverlust, aus TUNNEL.INLET",
  "friction loss, from TUNNEL.FRICTION": "Reibungsverlust, aus TUNNEL.FRICTION",
  other: "sonstiges",
  "grids at both ends and anything else": "Gitter an beiden Enden und alles andere",
  "the 1 is the energy that the jet carries away": "die 1 ist die Energie, die der Strahl fortträgt",
  "Head of water that the flow in the tube pulls with": "Wassersäule, mit der die Strömung im Rohr saugt",
  "Compare with the cover: where this is more than the cover, air is drawn as soon as a path to the surface opens. On small craft it always is, so it ranks layouts and does not pass or fail one.":
    "Vergleichen Sie mit der Überdeckung: Wo dies mehr ist, wird Luft gezogen, sobald sich ein Weg zur Oberfläche öffnet. Bei kleinen Fahrzeugen ist es das immer, darum ordnet es Anordnungen und ist kein Nachweis.",
  "inlet loss in velocity heads": "Einlaufverlust in Geschwindigkeitshöhen",
  "standard gravity": "Normfallbeschleunigung",
  "velocity head and inlet loss ahead of the propeller": "Geschwindigkeitshöhe und Einlaufverlust vor dem Propeller",
  "Steepest slope of the skin against the tunnel's end": "Steilste Neigung der Haut gegen das Tunnelende",
  "A flat skin at the tunnel. The angle between the tunnel's axis and the square to the skin is atan of this.":
    "Eine ebene Haut am Tunnel. Der Winkel zwischen Tunnelachse und Hautsenkrechter ist der atan davon.",
  entrance: "Einlaufwinkel",
  "half-angle of the waterline at tunnel height against the centreline":
    "halber Winkel der Wasserlinie in Tunnelhöhe gegen Mitte Schiff",
  flare: "Ausfall",
  "transverse section from vertical, outward going up": "Spant gegen die Senkrechte, nach oben ausfallend",
  "slope of the plane y = b − x tan(entrance) + z tan(flare)":
    "Neigung der Ebene y = b − x tan(Einlaufwinkel) + z tan(Ausfall)",
  "Where the tube is longest": "Wo das Rohr am längsten ist",
  "Counted as everywhere here: 0 top, 90 forward, 180 bottom, 270 aft; port and starboard are mirror images with the same angle. On a square end (both angles 0) any place is as long; 0 is given.":
    "Gezählt wie überall hier: 0 oben, 90 vorn, 180 unten, 270 achtern; Backbord und Steuerbord sind Spiegelbilder mit demselben Winkel. An einem rechtwinkligen Ende (beide Winkel 0) ist jede Stelle gleich lang; gegeben wird 0.",
  "straight aft": "genau achtern",
  "at the bottom": "unten",
  "the long axis of the hole runs along (−tan(entrance), tan(flare)) in side view":
    "die lange Achse des Lochs läuft in der Seitenansicht längs (−tan(Einlaufwinkel), tan(Ausfall))",
  "Length of the tube from the centreplane to the skin": "Länge des Rohrs von Mitte Schiff bis zur Haut",
  "A flat skin at the tunnel; with flare over about 45 degrees take offsets at top, axis and bottom instead (SHELL.BULGE shows by how much a side is not flat). Use the outer diameter for the hole. Below 0 the hole crosses the centreplane.":
    "Eine ebene Haut am Tunnel; bei einem Ausfall über etwa 45 Grad nehmen Sie stattdessen Aufmaße oben, an der Achse und unten (SHELL.BULGE zeigt, wie weit eine Seite nicht eben ist). Nehmen Sie für das Loch den Außendurchmesser. Unter 0 kreuzt das Loch Mitte Schiff.",
  "half breadth": "halbe Breite",
  "half-breadth of the hull at the tunnel axis": "halbe Breite des Rumpfs an der Tunnelachse",
  "place on the tube: 0 top, 90 forward, 180 bottom, 270 aft":
    "Stelle am Rohr: 0 oben, 90 vorn, 180 unten, 270 achtern",
  "radius of the tube": "Radius des Rohrs",
  "what the flare adds at the top": "was der Ausfall oben hinzufügt",
  "what the entrance takes off forward": "was der Einlaufwinkel vorn wegnimmt",
  "the skin as a plane through the half-breadth on the axis": "die Haut als Ebene durch die halbe Breite auf der Achse",
  "Length of tube to order": "Rohrlänge zum Bestellen",
  "A flat skin at the tunnel and a tube square to the centreplane. Use the outer diameter.":
    "Eine ebene Haut am Tunnel und ein Rohr rechtwinklig zu Mitte Schiff. Nehmen Sie den Außendurchmesser.",
  allowance: "Zugabe",
  "left standing at each end for trimming": "bleibt an jedem Ende zum Zuschneiden stehen",
  "steepest slope of the skin against the tunnel's end": "steilste Neigung der Haut gegen das Tunnelende",
  "the longest line on the tube, both sides": "die längste Linie am Rohr, beide Seiten",
  "Cut line of the tube's end against its mean": "Schnittlinie des Rohrendes gegen ihr Mittel",
  "A flat skin; unrolled, the line is a pure cosine. Use the outer diameter for a template that is wrapped around the tube.":
    "Eine ebene Haut; abgewickelt ist die Linie ein reiner Kosinus. Nehmen Sie für eine Schablone, die um das Rohr gewickelt wird, den Außendurchmesser.",
  "outboard of the mean line is above 0": "außenbords der Mittellinie ist über 0",
  "Long axis of the hole in the skin": "Lange Achse des Lochs in der Haut",
  "Measured on a flat skin, with the outer diameter of the tube. The short axis is the diameter itself.":
    "Gemessen auf einer ebenen Haut, mit dem Außendurchmesser des Rohrs. Die kurze Achse ist der Durchmesser selbst.",
  "Before the skin is opened the boat must stand ashore and shored; grinding dust of glass and resin calls for a mask, gloves and extraction. Local codes and licensed practice decide.":
    "Bevor die Haut geöffnet wird, muss das Boot an Land stehen und abgestützt sein; Schleifstaub von Glas und Harz verlangt Maske, Handschuhe und Absaugung. Maßgebend sind örtliche Regeln und zugelassene Fachleute.",
  "an ellipse; its short axis is the tube's diameter": "eine Ellipse; ihre kurze Achse ist der Durchmesser des Rohrs",
  "Length of the hole's edge": "Länge des Lochrands",
  "Measured on a flat skin, with the outer diameter of the tube.":
    "Gemessen auf einer ebenen Haut, mit dem Außendurchmesser des Rohrs.",
  "half the long axis of the ellipse": "halbe lange Achse der Ellipse",
  "square of the ellipse's eccentricity": "Quadrat der Exzentrizität der Ellipse",
  "elliptic integral E(m) over a quarter, divided by π/2":
    "elliptisches Integral E(m) über ein Viertel, geteilt durch π/2",
  "4 a E(m), the perimeter of an ellipse": "4 a E(m), der Umfang einer Ellipse",
  "Area of the hole in the skin": "Fläche des Lochs in der Haut",
  "One hole, measured on a flat skin, with the outer diameter of the tube.":
    "Ein Loch, gemessen auf einer ebenen Haut, mit dem Außendurchmesser des Rohrs.",
  "half the short axis of the ellipse": "halbe kurze Achse der Ellipse",
  "π times both half axes": "π mal beide Halbachsen",
  "Strip of the aft wall that is seen from dead ahead": "Streifen der Achterwand, den man von genau vorn sieht",
  "The strip at axis height, its widest. It should not be seen: recess the aft edge, set a deflector ahead of the forward one, or share it between both. On the cautious side, as real flow bends along the hull.":
    "Der Streifen in Achshöhe, sein breitester. Er sollte nicht zu sehen sein: Lassen Sie die Achterkante zurückspringen, setzen Sie einen Abweiser vor die Vorderkante oder teilen Sie beides auf. Auf der vorsichtigen Seite, weil wirkliche Strömung dem Rumpf folgt.",
  "how much farther out the aft edge stands than the forward edge; flare does not matter":
    "wie viel weiter außen die Achterkante steht als die Vorderkante; der Ausfall spielt keine Rolle",
  "Length of the recess behind the tunnel": "Länge des Rücksprungs hinter dem Tunnel",
  "A flat skin, measured fore and aft from the aft edge. An added angle of 10 to 15 degrees is common practice.":
    "Eine ebene Haut, gemessen längsschiffs von der Achterkante. Ein zusätzlicher Winkel von 10 bis 15 Grad ist übliche Praxis.",
  added: "Zusatz",
  "floor of the recess against the skin": "Boden des Rücksprungs gegen die Haut",
  "a right angle": "ein rechter Winkel",
  "added: {added} deg on an entrance of {entrance} deg makes 90 deg or more, where the recess has no end":
    "Zusatz: {added} deg auf einen Einlaufwinkel von {entrance} deg ergibt 90 deg oder mehr, wo der Rücksprung kein Ende hat",
  "the strip that must go inboard of the skin": "der Streifen, der hinter die Haut muss",
  "where the floor of the recess meets the skin again, fore and aft":
    "wo der Boden des Rücksprungs wieder auf die Haut trifft, längsschiffs",
  "Depth of the recess at the aft edge, square to the skin":
    "Tiefe des Rücksprungs an der Achterkante, rechtwinklig zur Haut",
  "The full depth, at axis height; it dies out at the top and bottom of the hole. Build the inside up first where the skin is not thick enough.":
    "Die volle Tiefe, in Achshöhe; oben und unten am Loch läuft sie aus. Bauen Sie zuerst die Innenseite auf, wo die Haut nicht dick genug ist.",
  "the strip of TUNNEL.BACKFACE measured square to the skin":
    "der Streifen aus TUNNEL.BACKFACE, rechtwinklig zur Haut gemessen",
  "Least wall of a fibre-reinforced tube": "Kleinste Wand eines Rohrs aus Faserverbund",
  "Classed craft with a fibre-reinforced hull. For an unclassed boat it is a bar to hold the yard's own target against, not a law.":
    "Klassifizierte Fahrzeuge mit Faserverbundrumpf. Für ein nicht klassifiziertes Boot ist es ein Maßstab für das eigene Ziel der Werft, kein Gesetz.",
  shell: "Schale",
  "hull laminate next to the tunnel": "Rumpflaminat neben dem Tunnel",
  "least wall whatever the shell": "kleinste Wand, gleich welche Schale",
  "shell and a quarter": "Schale und ein Viertel",
  "the larger of the two": "das größere von beiden",
  "Water carried in the tunnel": "Wasser, das der Tunnel mitführt",
  "Buoyancy lost, not cargo: count it once, as lost buoyancy or as added weight, never both. The mean length is twice the half-breadth on a flat skin, whatever the angles.":
    "Verlorener Auftrieb, keine Ladung: Zählen Sie es einmal, als verlorenen Auftrieb oder als zusätzliches Gewicht, nie beides. Die mittlere Länge ist bei ebener Haut das Doppelte der halben Breite, gleich welche Winkel.",
  "inner diameter of the tube": "Innendurchmesser des Rohrs",
  "mean length of the tube": "mittlere Länge des Rohrs",
  "bore of the tube": "Bohrung des Rohrs",
  "mass of the water in it": "Masse des Wassers darin",
  "Least lean that gets the motor under the headroom": "Kleinste Neigung, die den Motor unter die Bauhöhe bringt",
  "A motor that leans about the tunnel's axis; the room for its foot and for taking it out again is not in it. Above 30 degrees the motor needs a support of its own.":
    "Ein Motor, der sich um die Tunnelachse neigt; der Platz für seinen Fuß und zum Ausbauen ist nicht darin. Über 30 Grad braucht der Motor eine eigene Abstützung.",
  "A leaning motor hangs its weight on the tunnel and its joint: support it while fitting and in service. The equipment builder's limit and local codes and licensed practice decide.":
    "Ein geneigter Motor hängt sein Gewicht an den Tunnel und seine Verbindung: Stützen Sie ihn beim Einbau und im Betrieb ab. Maßgebend sind die Grenze des Geräteherstellers, örtliche Regeln und zugelassene Fachleute.",
  "from the tunnel's axis to the motor's top": "von der Tunnelachse bis zur Motoroberkante",
  radius: "Radius",
  "half the width of the motor's top in the plane it leans in":
    "halbe Breite der Motoroberseite in der Ebene, in der er sich neigt",
  headroom: "Bauhöhe",
  "from the tunnel's axis up to what is in the way": "von der Tunnelachse nach oben bis zu dem, was im Weg ist",
  "headroom: {headroom} mm is less than the motor's radius {radius} mm; it does not fit even lying flat":
    "Bauhöhe: {headroom} mm ist weniger als der Motorradius {radius} mm; er passt nicht einmal liegend",
  "from the axis to the upper corner of the motor": "von der Achse zur oberen Ecke des Motors",
  "the corner first rises, then comes down to the headroom: height·cos θ + radius·sin θ = headroom":
    "die Ecke steigt erst und kommt dann auf die Bauhöhe herunter: Höhe·cos θ + Radius·sin θ = Bauhöhe",
};
