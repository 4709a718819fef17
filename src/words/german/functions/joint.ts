// Past 150 lines: one text a line.
import type { Catalogue } from "../../catalogue";

/** Named functions of the family "Joint and laminate": titles, arguments, steps, limits. */
export const joint: Catalogue = {
  "Thickness of one ply": "Dicke einer Lage",
  "No voids. At 2.56 and 1.20 it is the standard's glass and polyester formula. For the thickness wanted take the fraction of a simple surface; for the resin to buy take that of a complex one, which a joint in a bow locker is.":
    "Keine Lunker. Mit 2,56 und 1,20 ist es die Formel der Norm für Glas und Polyester. Für die gewünschte Dicke nehmen Sie den Anteil einer einfachen Fläche; für das zu kaufende Harz den einer verwickelten, wie es eine Verbindung im Bugraum ist.",
  fabric: "Gewebe",
  "dry reinforcement": "trockene Verstärkung",
  fraction: "Anteil",
  "fibre mass over laminate mass": "Fasermasse zur Laminatmasse",
  fibre: "Faser",
  "fibre density; E-glass 2.56": "Dichte der Faser; E-Glas 2,56",
  resin: "Harz",
  "cured resin density; polyester 1.20, epoxy about 1.15":
    "Dichte des ausgehärteten Harzes; Polyester 1,20, Epoxid etwa 1,15",
  "grams in a kilogram": "Gramm in einem Kilogramm",
  "dry reinforcement in kilograms": "trockene Verstärkung in Kilogramm",
  "volume of fibre and of resin on a square metre; a dm3 on a m2 is a mm":
    "Volumen von Faser und Harz auf einem Quadratmeter; ein dm3 auf einem m2 ist ein mm",
  "Resin held by a ply": "Harz, das eine Lage hält",
  "Resin in the laminate only: what stays in pots, rollers and peel ply comes on top. Wet-out charts agree with the fraction of a complex surface.":
    "Nur das Harz im Laminat: Was in Töpfen, Rollen und Abreißgewebe bleibt, kommt dazu. Tränkungstabellen stimmen mit dem Anteil einer verwickelten Fläche überein.",
  "Polyester and vinyl ester give off styrene (US shipyard limit 100 ppm over 8 h, 29 CFR 1915.1000; in the UK EH40, from memory); epoxy and its hardener cause lasting skin allergy: ventilate, gloves, no solvent on skin; local codes and licensed practice decide.":
    "Polyester und Vinylester geben Styrol ab (US-Werftgrenze 100 ppm über 8 h, 29 CFR 1915.1000; in Großbritannien EH40, aus dem Gedächtnis); Epoxid und sein Härter machen bleibende Hautallergien: Lüften, Handschuhe, kein Lösemittel auf die Haut; maßgebend sind örtliche Regeln und zugelassene Fachleute.",
  "what is not fibre is resin": "was nicht Faser ist, ist Harz",
  "Plies that make up a thickness": "Lagen, die eine Dicke ergeben",
  "Plies of one kind. Mixed stacks are added up ply by ply.":
    "Lagen einer Art. Gemischte Aufbauten werden Lage für Lage zusammengezählt.",
  thickness: "Dicke",
  "thickness to be reached": "zu erreichende Dicke",
  each: "je",
  "thickness of one ply": "Dicke einer Lage",
  "rounded up; a billionth is taken off so that three plies of a third are three":
    "aufgerundet; ein Milliardstel wird abgezogen, damit drei Lagen von einem Drittel drei sind",
  "Fibre share of a laminate's volume": "Faseranteil am Volumen eines Laminats",
  "No voids.": "Keine Lunker.",
  "fibre in a kilogram of laminate": "Faser in einem Kilogramm Laminat",
  "resin in a kilogram of laminate": "Harz in einem Kilogramm Laminat",
  "fibre over all": "Faser zu allem",
  "Density of a laminate": "Dichte eines Laminats",
  "a kilogram over the volumes of its fibre and its resin":
    "ein Kilogramm durch die Volumen seiner Faser und seines Harzes",
  "Fibre fraction from resin to glass": "Faseranteil aus Harz zu Glas",
  "Masses, not volumes. The trade rounds: 2.5:1 is called 30 % glass, 1.25:1 45 %.":
    "Massen, keine Volumen. Das Gewerbe rundet: 2,5:1 heißt 30 % Glas, 1,25:1 heißt 45 %.",
  ratio: "Verhältnis",
  "resin to glass by mass": "Harz zu Glas nach Masse",
  "glass over glass and resin": "Glas zu Glas und Harz",
  "Fabric sold by the ounce, in grams a square metre": "Nach Unzen verkauftes Gewebe, in Gramm je Quadratmeter",
  "Mat is sold per square foot, cloth per square yard: the same ounces differ nine times. A stitched mat is two layers of two kinds; add them up separately.":
    "Matte wird je Quadratfuß verkauft, Gewebe je Quadratyard: Dieselben Unzen unterscheiden sich um das Neunfache. Eine vernähte Matte sind zwei Lagen zweier Arten; zählen Sie sie getrennt zusammen.",
  ounces: "Unzen",
  "weight on the label": "Gewicht auf dem Etikett",
  per: "je",
  "area on the label": "Fläche auf dem Etikett",
  "avoirdupois ounce": "Unze avoirdupois",
  "square foot": "Quadratfuß",
  "square yard": "Quadratyard",
  "the area that the label means": "die Fläche, die das Etikett meint",
  "mass over area": "Masse durch Fläche",
  "Usual fibre fraction of a reinforcement": "Üblicher Faseranteil einer Verstärkung",
  "Glass. A burnt-out sample of the yard's own laminate is better than any table.":
    "Glas. Eine veraschte Probe vom eigenen Laminat der Werft ist besser als jede Tabelle.",
  reinforcement: "Verstärkung",
  "glass reinforcement": "Glasverstärkung",
  surface: "Fläche",
  "how it is laid up": "wie laminiert wird",
  "default of the standard where nothing was measured": "Vorgabe der Norm, wo nichts gemessen wurde",
  "ISO 12215-5 fibre fractions": "Faseranteile nach ISO 12215-5",
  "by hand on a simple surface, fibre mass over laminate mass":
    "von Hand auf einfacher Fläche, Fasermasse zur Laminatmasse",
  "by hand on a complex surface": "von Hand auf verwickelter Fläche",
  "under vacuum": "unter Vakuum",
  "Usual fibre fraction of mat and woven roving together": "Üblicher Faseranteil von Matte und Rovinggewebe zusammen",
  "Glass mat and woven roving laid up wet in wet. The ends do not quite meet the values of the single materials.":
    "Glasmatte und Rovinggewebe nass in nass laminiert. Die Enden treffen die Werte der einzelnen Werkstoffe nicht ganz.",
  mat: "Matte",
  "mat mass over all glass mass": "Mattenmasse zur ganzen Glasmasse",
  "fraction without mat": "Anteil ohne Matte",
  "ISO 12215-5 fibre fractions of mat and woven roving together":
    "Faseranteile von Matte und Rovinggewebe zusammen nach ISO 12215-5",
  "what a share of mat takes off, times that share": "was ein Anteil Matte wegnimmt, mal diesem Anteil",
  "what mat takes off": "was Matte wegnimmt",
  "straight line in the share of mat": "gerade Linie im Mattenanteil",
  "Hull laminate at the tunnel": "Rumpflaminat am Tunnel",
  "Classed craft; for an unclassed boat a bar to hold the yard's own target against, not a law. The rule does not say how the extra half is shared between the inside and the outside.":
    "Klassifizierte Fahrzeuge; für ein nicht klassifiziertes Boot ein Maßstab für das eigene Ziel der Werft, kein Gesetz. Die Regel sagt nicht, wie die zusätzliche Hälfte auf innen und außen verteilt wird.",
  "half as thick again": "noch einmal halb so dick",
  "local increase by a half": "örtliche Verstärkung um die Hälfte",
  "Band on the hull round the hole": "Streifen auf dem Rumpf rund um das Loch",
  "Outside a convex edge on a skin that is nearly flat. The band must end short of frames, stem and the other side.":
    "Außerhalb eines gewölbten Randes auf einer fast ebenen Haut. Der Streifen muss vor Spanten, Steven und der anderen Seite enden.",
  "Grinding glass throws fine dust: dust extraction, a fitted respirator, goggles, covered skin and a tent (usual rules, named from memory: OSHA 29 CFR 1910.134 and 1915 Subpart I, UK COSHH 2002); local codes and licensed practice decide.":
    "Glas schleifen wirft feinen Staub auf: Absaugung, ein angepasster Atemschutz, Schutzbrille, bedeckte Haut und ein Zelt (übliche Regeln, aus dem Gedächtnis genannt: OSHA 29 CFR 1910.134 und 1915 Subpart I, UK COSHH 2002); maßgebend sind örtliche Regeln und zugelassene Fachleute.",
  edge: "Rand",
  "length of the hole's edge, once round": "Länge des Lochrands, einmal herum",
  width: "Breite",
  "width of the band": "Breite des Streifens",
  "edge times width, and the corners that the turn adds up to a whole circle":
    "Rand mal Breite, und die Ecken, die sich zu einem ganzen Kreis ergänzen",
  "Band on the tube": "Streifen auf dem Rohr",
  "Width measured along the tube; the same on a slanting end, since both edges of the band slant alike.":
    "Breite längs des Rohrs gemessen; an einem schrägen Ende dieselbe, weil beide Ränder des Streifens gleich schräg sind.",
  "outer diameter of the tube": "Außendurchmesser des Rohrs",
  "girth times width": "Umfang mal Breite",
  "Fabric of all plies of one joint": "Gewebe aller Lagen einer Verbindung",
  "One end, one side of the shell, both legs alike; a job has up to four. Check that the longest leg fits between the two hull sides and short of the motor's saddle. Net area, without laps and offcuts.":
    "Ein Ende, eine Seite der Schale, beide Schenkel gleich; eine Arbeit hat bis zu vier. Prüfen Sie, dass der längste Schenkel zwischen die beiden Rumpfseiten und vor den Motorsattel passt. Nettofläche, ohne Überlappungen und Verschnitt.",
  "leg of the first ply on hull and tube": "Schenkel der ersten Lage auf Rumpf und Rohr",
  step: "Stufe",
  "what each further ply reaches beyond the last": "was jede weitere Lage über die vorige hinausreicht",
  count: "Anzahl",
  plies: "Lagen",
  "band on the tube and band on the hull, ply by ply":
    "Streifen auf dem Rohr und Streifen auf dem Rumpf, Lage für Lage",
  "Width of a bevel": "Breite einer Schäftung",
  "From one side. Ground from both sides, each takes half the thickness and half the width. The ground circle is the hole and twice the width: larger than most expect.":
    "Von einer Seite. Von beiden Seiten geschliffen nimmt jede die halbe Dicke und die halbe Breite. Der Schleifkreis ist das Loch und zweimal die Breite: größer, als die meisten erwarten.",
  "thickness of the laminate": "Dicke des Laminats",
  "length of the bevel for one of thickness; 12 below water is common":
    "Länge der Schäftung auf eins der Dicke; 12 unter Wasser ist üblich",
  "so many times the thickness": "so viele Male die Dicke",
  "Laminate that a bevel round a hole takes away": "Laminat, das eine Schäftung rund um ein Loch wegnimmt",
  "A round hole, ground from one side, in a skin that is nearly flat.":
    "Ein rundes Loch, von einer Seite geschliffen, in einer fast ebenen Haut.",
  "hole radius": "Lochradius",
  "radius of the hole": "Radius des Lochs",
  "mm3 in a millilitre": "mm3 in einem Milliliter",
  "width of the bevel": "Breite der Schäftung",
  "triangle ground off": "abgeschliffenes Dreieck",
  "way of the triangle's centre once round": "Weg des Dreiecksschwerpunkts einmal herum",
  "Pappus: area times way": "Pappus: Fläche mal Weg",
  "Section of a fillet": "Querschnitt einer Hohlkehle",
  "A round hollow that touches both sides. Filler in the corner never counts as structure: the glass over it does.":
    "Eine runde Kehle, die beide Seiten berührt. Spachtel in der Ecke zählt nie als tragend: Das Glas darüber tut es.",
  "radius of the fillet": "Radius der Hohlkehle",
  "inside angle of the corner": "Innenwinkel der Ecke",
  "kite between the corner and the two touching points, less the arc's sector":
    "Drachen zwischen Ecke und den beiden Berührpunkten, weniger der Sektor des Bogens",
  "as the square of the radius": "wie das Quadrat des Radius",
  "Filler in the fillet round the joint": "Spachtel in der Hohlkehle rund um die Verbindung",
  "A flat skin and a fillet small against the tube; for the way of its centre add 0.22 of its radius to that of the tube. A 90° formula is a third short at 30° of tilt and three quarters at 45°.":
    "Eine ebene Haut und eine gegen das Rohr kleine Hohlkehle; für den Weg ihres Schwerpunkts zählen Sie 0,22 ihres Radius zu dem des Rohrs. Eine 90°-Formel ist bei 30° Neigung um ein Drittel und bei 45° um drei Viertel zu klein.",
  tilt: "Neigung",
  "skin's normal against the tunnel's axis; 0 where the tube meets it squarely":
    "Hautsenkrechte gegen die Tunnelachse; 0, wo das Rohr sie rechtwinklig trifft",
  "how far the corner opens and closes": "wie weit sich die Ecke öffnet und schließt",
  "how far the edge is drawn out": "wie weit der Rand gestreckt ist",
  "section over r², for the inside angle 90° + asin(sin tilt·cos φ), weighted by length of edge":
    "Querschnitt durch r², für den Innenwinkel 90° + asin(sin Neigung·cos φ), gewichtet mit der Randlänge",
  "mean section": "mittlerer Querschnitt",
  "section times edge": "Querschnitt mal Rand",
  "Pot life at the temperature of the day": "Topfzeit bei der Temperatur des Tages",
  "10 to 35 °C, the mass that the data sheet names (often 100 g): a larger pot goes off sooner and no general law says how much. US Army TM 1-1500-204-23-11 halves the stated time above 32 °C, which is stricter.":
    "10 bis 35 °C, die Masse, die das Datenblatt nennt (oft 100 g): Ein größerer Ansatz geht früher los, und kein allgemeines Gesetz sagt, wie viel. US Army TM 1-1500-204-23-11 halbiert die angegebene Zeit über 32 °C, was strenger ist.",
  "A full pot heats itself and can smoke or burn: small shallow pots, a metal tray outdoors for what sets, nothing warm into a bin (usual rules, named from memory: UK DSEAR 2002, OSHA 29 CFR 1915 Subpart P); local codes and licensed practice decide.":
    "Ein voller Topf heizt sich selbst auf und kann rauchen oder brennen: kleine flache Töpfe, ein Metallblech im Freien für das, was aushärtet, nichts Warmes in die Tonne (übliche Regeln, aus dem Gedächtnis genannt: UK DSEAR 2002, OSHA 29 CFR 1915 Subpart P); maßgebend sind örtliche Regeln und zugelassene Fachleute.",
  minutes: "Minuten",
  "pot life at 25 °C": "Topfzeit bei 25 °C",
  "resin and air": "Harz und Luft",
  "temperature of the data sheet": "Temperatur des Datenblatts",
  "rise that halves the pot life": "Anstieg, der die Topfzeit halbiert",
  "twice as long for each 10 °C below, half for each 10 °C above":
    "doppelt so lang je 10 °C darunter, halb so lang je 10 °C darüber",
  "Resin to mix at once": "Harz, das auf einmal gemischt wird",
  "Share and cap are habits, not data: use the resin's own sheet where it says more.":
    "Anteil und Obergrenze sind Gewohnheiten, keine Daten: Nehmen Sie das Datenblatt des Harzes, wo es mehr sagt.",
  rate: "Rate",
  "resin that the crew lays up": "Harz, das die Leute verarbeiten",
  potlife: "Topfzeit",
  "pot life at the temperature of the day": "Topfzeit bei der Temperatur des Tages",
  "part of the pot life to count on": "Teil der Topfzeit, mit dem gerechnet wird",
  cap: "Obergrenze",
  "most in one pot": "höchstens in einem Topf",
  "what is used up in time, and never more than the cap":
    "was rechtzeitig verbraucht wird, und nie mehr als die Obergrenze",
  "Pots to mix": "Zu mischende Töpfe",
  "Equal pots. Pots of different plies do not share a rest.":
    "Gleiche Töpfe. Töpfe verschiedener Lagen teilen keinen Rest.",
  total: "gesamt",
  "resin of the joint": "Harz der Verbindung",
  "resin in one pot": "Harz in einem Topf",
  "rounded up; a billionth is taken off so that twelve pots of a twelfth are twelve":
    "aufgerundet; ein Milliardstel wird abgezogen, damit zwölf Töpfe von einem Zwölftel zwölf sind",
  "Hardener in a mixed portion": "Härter in einer gemischten Portion",
  "Parts by mass. A ratio by volume is another number: 5:1 by volume is about 5.9:1 by mass where the hardener is lighter. Never change an epoxy's ratio to change its speed.":
    "Teile nach Masse. Ein Verhältnis nach Volumen ist eine andere Zahl: 5:1 nach Volumen ist etwa 5,9:1 nach Masse, wo der Härter leichter ist. Ändern Sie nie das Verhältnis eines Epoxids, um sein Tempo zu ändern.",
  "Amine hardener burns skin and peroxide burns eyes: gloves, goggles and an eyewash within reach, never peroxide straight into accelerator (usual rules, named from memory: UK COSHH 2002, OSHA 29 CFR 1910.151 and 1910.1200); local codes and licensed practice decide.":
    "Aminhärter verätzt die Haut und Peroxid die Augen: Handschuhe, Schutzbrille und eine Augendusche in Reichweite, Peroxid nie direkt in den Beschleuniger (übliche Regeln, aus dem Gedächtnis genannt: UK COSHH 2002, OSHA 29 CFR 1910.151 und 1910.1200); maßgebend sind örtliche Regeln und zugelassene Fachleute.",
  mixed: "gemischt",
  "resin and hardener together": "Harz und Härter zusammen",
  "resin parts": "Harzteile",
  "parts of resin by mass": "Teile Harz nach Masse",
  "hardener parts": "Härterteile",
  "parts of hardener by mass": "Teile Härter nach Masse",
  "the hardener's share of all parts": "der Anteil des Härters an allen Teilen",
  "Packs to order": "Zu bestellende Gebinde",
  "Waste is the yard's own figure: no published one was found. Quantity and pack must be in one unit.":
    "Der Verschnitt ist die eigene Zahl der Werft: Eine veröffentlichte wurde nicht gefunden. Menge und Gebinde müssen in einer Einheit sein.",
  net: "netto",
  "quantity in the work": "Menge in der Arbeit",
  waste: "Verschnitt",
  "waste on top, as a share": "Verschnitt obendrauf, als Anteil",
  pack: "Gebinde",
  "quantity in one pack, in the same unit": "Menge in einem Gebinde, in derselben Einheit",
  "with waste, rounded up to whole packs": "mit Verschnitt, aufgerundet auf ganze Gebinde",
};
