// Past 150 lines: one text a line.
import type { Catalogue } from "../../catalogue";

/** Named functions of the family "Conductor and supply": titles, arguments, steps, limits. */
export const supply: Catalogue = {
  "Resistance of a copper run": "Widerstand einer Kupferleitung",
  "Plain copper of IEC 60228, about -20 to 150 °C; tinned strands have 2 to 3 % more. A size in mm2 stands for this resistance, not for the geometry of its strands, so do not swap it for a gauge: 50 mm2 is smaller than 1/0. Joints, isolator and fuse are not included.":
    "Blankes Kupfer nach IEC 60228, etwa -20 bis 150 °C; verzinnte Adern haben 2 bis 3 % mehr. Eine Größe in mm2 steht für diesen Widerstand, nicht für die Geometrie ihrer Drähte; tauschen Sie sie also nicht gegen eine Drahtnummer: 50 mm2 ist kleiner als 1/0. Verbindungen, Trennschalter und Sicherung sind nicht enthalten.",
  "nominal size of IEC 60228": "Nenngröße nach IEC 60228",
  run: "Leitung",
  "length of conductor out and back": "Länge des Leiters hin und zurück",
  "of the conductor": "des Leiters",
  parallel: "parallel",
  "equal conductors side by side": "gleiche Leiter nebeneinander",
  class: "Klasse",
  "2 stranded or 5 flexible": "2 mehrdrähtig oder 5 feindrähtig",
  "rise of copper's resistance for each kelvin, as a share of that at 20 °C":
    "Anstieg des Kupferwiderstands je Kelvin, als Anteil von dem bei 20 °C",
  "temperature that resistances are stated at": "Temperatur, für die Widerstände angegeben sind",
  "metres in a km": "Meter in einem km",
  "largest resistance allowed at 20 °C": "größter erlaubter Widerstand bei 20 °C",
  "IEC 60228 sizes": "Größen nach IEC 60228",
  "nominal size": "Nenngröße",
  "class 2, stranded, plain copper, largest at 20 °C": "Klasse 2, mehrdrähtig, blankes Kupfer, größter bei 20 °C",
  "class 5, flexible, plain copper, largest at 20 °C": "Klasse 5, feindrähtig, blankes Kupfer, größter bei 20 °C",
  "length, temperature, conductors side by side": "Länge, Temperatur, Leiter nebeneinander",
  "Voltage lost in a copper run": "Spannungsabfall in einer Kupferleitung",
  "Flexible plain copper (class 5); joints, isolator and fuse not included. Constants in circulation (0.0164 ohm mm2/m, 10.75 ohm circular mil/ft) stand for cool solid wire and promise less than a real cable loses; the 3 % wire lists for 12 V break even their own formula in 10 of 98 places, each time too thin.":
    "Feindrähtiges blankes Kupfer (Klasse 5); Verbindungen, Trennschalter und Sicherung nicht enthalten. Umlaufende Konstanten (0,0164 ohm mm2/m, 10,75 ohm circular mil/ft) stehen für kühlen massiven Draht und versprechen weniger, als ein wirkliches Kabel verliert; die 3-%-Drahtlisten für 12 V verletzen sogar ihre eigene Formel an 10 von 98 Stellen, jedes Mal zu dünn.",
  current: "Strom",
  "current while running": "Strom im Betrieb",
  "largest resistance allowed at 20 °C, class 5": "größter erlaubter Widerstand bei 20 °C, Klasse 5",
  "Ohm's law": "Ohmsches Gesetz",
  "Smallest conductor that keeps a voltage drop": "Kleinster Leiter, der einen Spannungsabfall einhält",
  "Flexible plain copper (class 5) by voltage alone: hold the answer against CONDUCTOR.CARRY or CONDUCTOR.CARRYSHIP and against the fault as well. Wire lists for a 3 % drop that go round come out one size thinner in 10 of 98 places than the formula they rest on.":
    "Feindrähtiges blankes Kupfer (Klasse 5) allein nach der Spannung: Halten Sie die Antwort auch gegen CONDUCTOR.CARRY oder CONDUCTOR.CARRYSHIP und gegen den Fehlerfall. Umlaufende Drahtlisten für 3 % Abfall liegen an 10 von 98 Stellen eine Größe unter der Formel, auf der sie beruhen.",
  "A conductor that is too thin burns its insulation and can start a fire: fuse it at the source and keep every lug, switch and fuse holder within its own temperature (33 CFR 183.455, ISO 13297). Local codes and licensed practice decide.":
    "Ein zu dünner Leiter verbrennt seine Isolierung und kann ein Feuer auslösen: Sichern Sie ihn an der Quelle ab und halten Sie jeden Kabelschuh, Schalter und Sicherungshalter in seiner eigenen Temperatur (33 CFR 183.455, ISO 13297). Maßgebend sind örtliche Regeln und zugelassene Fachleute.",
  drop: "Abfall",
  "largest drop allowed in the run": "größter erlaubter Abfall in der Leitung",
  "first size whose drop is not above the limit, class 5":
    "erste Größe, deren Abfall nicht über der Grenze liegt, Klasse 5",
  "Resistance of a copper bar or solid wire": "Widerstand einer Kupferschiene oder eines massiven Drahts",
  "Pure annealed copper of known cross-section, about -20 to 150 °C: busbars, solid wire, gauges by AWG.AREA. Stranding and tinning add 2 to 19 %; for a cable sold by mm2 use CONDUCTOR.RESISTANCE, because a nominal size is defined by its resistance.":
    "Reines weichgeglühtes Kupfer mit bekanntem Querschnitt, etwa -20 bis 150 °C: Sammelschienen, massiver Draht, Drahtnummern nach AWG.AREA. Verseilen und Verzinnen bringen 2 bis 19 % dazu; für ein nach mm2 verkauftes Kabel nehmen Sie CONDUCTOR.RESISTANCE, weil eine Nenngröße durch ihren Widerstand festgelegt ist.",
  "true cross-section": "wahrer Querschnitt",
  "annealed copper at 20 °C": "weichgeglühtes Kupfer bei 20 °C",
  "resistivity, length over cross-section, temperature": "spezifischer Widerstand, Länge durch Querschnitt, Temperatur",
  "Cross-section of a gauge": "Querschnitt einer Drahtnummer",
  'Nominal area of the solid gauge. Type 4/0 with quotation marks in a formula ("4/0"), or it is a division. "1/0" on a boat cable may be 6 % less than this: the least area of stranded boat wire is 3 to 11 % below nominal. A metric size is no substitute: 50 mm2 is smaller than 1/0, 35 larger than 2.':
    'Nennfläche des massiven Drahts. Schreiben Sie 4/0 in einer Formel mit Anführungszeichen ("4/0"), sonst ist es eine Division. „1/0“ auf einem Bootskabel kann 6 % weniger sein: Die kleinste Fläche von mehrdrähtigem Bootskabel liegt 3 bis 11 % unter dem Nennwert. Eine metrische Größe ist kein Ersatz: 50 mm2 ist kleiner als 1/0, 35 größer als 2.',
  gauge: "Drahtnummer",
  "American wire gauge, 4/0 to 18": "American Wire Gauge, 4/0 bis 18",
  "diameter of 36 AWG": "Durchmesser von 36 AWG",
  "number of that gauge": "Nummer dieser Drahtnummer",
  "4/0 to 36 AWG in diameter": "4/0 zu 36 AWG im Durchmesser",
  "steps from 36 AWG to 4/0": "Stufen von 36 AWG bis 4/0",
  "1/0 counts as 0, 4/0 as -3": "1/0 zählt als 0, 4/0 als -3",
  "AWG gauges": "Drahtnummern AWG",
  "American wire gauge": "American Wire Gauge",
  "number in the rule for the diameter": "Nummer in der Regel für den Durchmesser",
  "diameters grow in a constant ratio": "Durchmesser wachsen in festem Verhältnis",
  "area of the circle": "Kreisfläche",
  "Smallest gauge that has an area": "Kleinste Drahtnummer, die eine Fläche hat",
  "Gauges 18 to 4/0 that 33 CFR 183.425 table 5 lists, by nominal area. A metric size and the gauge next to it are different cables: the gauge for 50 mm2 is 1/0, that for 35 mm2 is 1.":
    "Drahtnummern 18 bis 4/0, die 33 CFR 183.425 Tabelle 5 aufführt, nach Nennfläche. Eine metrische Größe und die Drahtnummer daneben sind verschiedene Kabel: die Drahtnummer für 50 mm2 ist 1/0, die für 35 mm2 ist 1.",
  "cross-section that is needed": "nötiger Querschnitt",
  "first gauge of 33 CFR 183.425 table 5 whose nominal area is not below it":
    "erste Drahtnummer aus 33 CFR 183.425 Tabelle 5, deren Nennfläche nicht darunter liegt",
  "AWG gauges of boat wiring": "Drahtnummern AWG für Boote",
  "least area of a stranded conductor sold under that gauge":
    "kleinste Fläche eines mehrdrähtigen Leiters, der unter dieser Drahtnummer verkauft wird",
  "Current that a boat cable may carry, by gauge": "Strom, den ein Bootskabel tragen darf, nach Drahtnummer",
  "Stranded copper, one circuit, continuous current; short surges are not covered by the limit. There is no metric column: never read 50 mm2 as 1/0. 33 CFR 183.455 allows a fuse of up to 150 % of this current below 50 V, other rules none above it: choose one on the page and show which. The engine-space factors other than 0.85 are from memory.":
    "Mehrdrähtiges Kupfer, ein Stromkreis, Dauerstrom; kurze Stöße deckt die Grenze nicht ab. Es gibt keine metrische Spalte: Lesen Sie nie 50 mm2 als 1/0. 33 CFR 183.455 erlaubt unter 50 V eine Sicherung bis 150 % dieses Stroms, andere Regeln nichts darüber: Wählen Sie auf der Seite eine und zeigen Sie, welche. Die Maschinenraumfaktoren außer 0,85 sind aus dem Gedächtnis.",
  insulation: "Isolierung",
  "temperature rating of the insulation": "Temperaturklasse der Isolierung",
  "engine space": "Maschinenraum",
  "whether the run passes through an engine space": "ob die Leitung durch einen Maschinenraum geht",
  "in 30 °C": "in 30 °C",
  "33 CFR 183.425 table 5": "33 CFR 183.425 Tabelle 5",
  "insulation rated 60 °C": "Isolierung für 60 °C",
  "insulation rated 75 °C": "Isolierung für 75 °C",
  "insulation rated 80 °C": "Isolierung für 80 °C",
  "insulation rated 90 °C": "Isolierung für 90 °C",
  "insulation rated 105 °C": "Isolierung für 105 °C",
  "insulation rated 125 °C": "Isolierung für 125 °C",
  "insulation rated 200 °C": "Isolierung für 200 °C",
  "what is left in an engine space at 50 °C": "was in einem Maschinenraum von 50 °C bleibt",
  "33 CFR 183.425 engine-space factors": "Maschinenraumfaktoren nach 33 CFR 183.425",
  "times the carrying current in 30 °C": "mal dem Strom, den es in 30 °C trägt",
  "the factor counts in an engine space only": "der Faktor zählt nur in einem Maschinenraum",
  "Current that a ship cable may carry, by metric size":
    "Strom, den ein Schiffskabel tragen darf, nach metrischer Größe",
  "Single core, continuous, the table for 45 °C brought to another ambient by the square root of the temperature room. Stands 3 to 15 % below the currents that 33 CFR 183.425 allows at like size. Give an engine space its own ambient, about 50 °C. The 60 °C value of 50 mm2 is as printed, below the line of its column.":
    "Einadrig, dauernd, die Tabelle für 45 °C nach der Wurzel des Temperaturabstands auf eine andere Umgebung gebracht. Liegt 3 bis 15 % unter den Strömen, die 33 CFR 183.425 bei gleicher Größe erlaubt. Geben Sie einem Maschinenraum seine eigene Umgebung, etwa 50 °C. Der 60-°C-Wert von 50 mm2 ist wie gedruckt, unter der Linie seiner Spalte.",
  "insulation class": "Isolationsklasse",
  ambient: "Umgebung",
  "air around the cable": "Luft um das Kabel",
  "ambient of the table": "Umgebung der Tabelle",
  "least room below the class": "kleinster Abstand unter der Klasse",
  "ambient: {ambient} °C is too near the insulation's {class} °C (allowed 20 °C to {gap} below the class)":
    "Umgebung: {ambient} °C liegt zu nahe an den {class} °C der Isolierung (erlaubt 20 °C bis {gap} unter der Klasse)",
  "single core in 45 °C": "einadrig in 45 °C",
  "ABS ship cable sizes": "Schiffskabelgrößen nach ABS",
  "V60, polyvinyl chloride": "V60, Polyvinylchlorid",
  "V75, heat-resisting polyvinyl chloride": "V75, wärmebeständiges Polyvinylchlorid",
  "R85 and E85, cross-linked polyethylene and ethylene propylene rubber":
    "R85 und E85, vernetztes Polyethylen und Ethylen-Propylen-Kautschuk",
  "M95 and S95, mineral and silicone rubber": "M95 und S95, mineralisch und Silikonkautschuk",
  "heat that can leave grows with the room between class and ambient":
    "die abführbare Wärme wächst mit dem Abstand zwischen Klasse und Umgebung",
  "Temperature of a conductor after a run": "Temperatur eines Leiters nach einem Lauf",
  "One leg of a run, for minutes: only copper stores heat, which errs on the hot side, and heat leaves as the carrying current implies, so that current for ever ends at the rated temperature; exact also where heating runs away. Start a second run from the end of the first; terminals and fuse holders warm faster than the cable. Refused past copper's melting point; insulation is gone long before.":
    "Ein Schenkel einer Leitung, für Minuten: Nur Kupfer speichert Wärme, was auf der heißen Seite irrt, und Wärme geht ab, wie es der Dauerstrom besagt, so dass dieser für immer bei der Nenntemperatur endet; genau auch, wo die Erwärmung davonläuft. Beginnen Sie einen zweiten Lauf mit dem Ende des ersten; Klemmen und Sicherungshalter erwärmen sich schneller als das Kabel. Jenseits des Kupferschmelzpunkts abgelehnt; die Isolierung ist lange vorher hin.",
  "true cross-section, of a gauge by AWG.AREA": "wahrer Querschnitt, bei einer Drahtnummer nach AWG.AREA",
  "in this conductor": "in diesem Leiter",
  seconds: "Sekunden",
  "length of the run": "Dauer des Laufs",
  "air around the conductor": "Luft um den Leiter",
  "conductor at the start of the run": "Leiter am Beginn des Laufs",
  carry: "Belastbarkeit",
  "its continuous carrying current": "sein Dauerstrom",
  rated: "Nenntemperatur",
  "temperature that belongs to the carrying current": "Temperatur, die zum Dauerstrom gehört",
  "ambient that belongs to the carrying current": "Umgebung, die zum Dauerstrom gehört",
  "heat of a metre of copper for each mm2 and kelvin": "Wärme eines Meters Kupfer je mm2 und Kelvin",
  "copper melts": "Kupfer schmilzt",
  "rated: {rated} °C is not above the base ambient of {base} °C, give the pair that the carrying current belongs to":
    "Nenntemperatur: {rated} °C liegt nicht über der Umgebung von {base} °C, geben Sie das Paar, zu dem der Dauerstrom gehört",
  "a metre of it at 20 °C": "ein Meter davon bei 20 °C",
  "the carrying current, held for ever, ends at its rated temperature":
    "der Dauerstrom, für immer gehalten, endet bei der Nenntemperatur",
  "the copper alone takes up heat": "nur das Kupfer nimmt Wärme auf",
  "heat made at ambient temperature": "bei Umgebungstemperatur erzeugte Wärme",
  "heat that leaves less heat that is added, for each kelvin above ambient; below 0 it runs away":
    "abgehende weniger hinzukommende Wärme, je Kelvin über der Umgebung; unter 0 läuft sie davon",
  "time in time constants": "Zeit in Zeitkonstanten",
  "mean of exp(-u) over the run; its series where u is small, so that u = 0 has its limit 1":
    "Mittel von exp(-u) über den Lauf; seine Reihe, wo u klein ist, damit u = 0 seinen Grenzwert 1 hat",
  "what is left of the start, and what the run adds": "was vom Beginn bleibt, und was der Lauf hinzufügt",
  "current: {current} A for {seconds} s would take the copper past its melting point ({melting} °C); take a larger conductor or a shorter run":
    "Strom: {current} A für {seconds} s brächte das Kupfer über seinen Schmelzpunkt ({melting} °C); nehmen Sie einen größeren Leiter oder einen kürzeren Lauf",
  "above ambient": "über der Umgebung",
  "Temperature of a conductor that loses no heat": "Temperatur eines Leiters, der keine Wärme verliert",
  "Upper bound: all heat stays in the copper. True to a few per cent up to 5 s; for a run of minutes it is the careful end and CONDUCTOR.WARM the likely one. Start a fault from the loaded temperature and use the fuse's total clearing time. Refused past copper's melting point; insulation is gone long before.":
    "Obergrenze: Alle Wärme bleibt im Kupfer. Bis 5 s auf wenige Prozent wahr; für einen Lauf von Minuten ist es das vorsichtige Ende und CONDUCTOR.WARM das wahrscheinliche. Beginnen Sie einen Fehlerfall mit der Temperatur unter Last und nehmen Sie die gesamte Abschaltzeit der Sicherung. Jenseits des Kupferschmelzpunkts abgelehnt; die Isolierung ist lange vorher hin.",
  "cross-section": "Querschnitt",
  "length of the run or of the fault": "Dauer des Laufs oder des Fehlers",
  "conductor at the start": "Leiter am Beginn",
  "copper, from its heat and resistivity": "Kupfer, aus seiner Wärme und seinem spezifischen Widerstand",
  "where the straight line of copper's resistance meets zero": "wo die gerade Linie des Kupferwiderstands null trifft",
  "growth of the resistance, as a logarithm": "Wachstum des Widerstands, als Logarithmus",
  "temperature counted from where copper's resistance would vanish":
    "Temperatur, gezählt ab dort, wo der Widerstand des Kupfers verschwände",
  "current: {current} A for {seconds} s would take the copper past its melting point ({melting} °C); take a larger conductor or a shorter time":
    "Strom: {current} A für {seconds} s brächte das Kupfer über seinen Schmelzpunkt ({melting} °C); nehmen Sie einen größeren Leiter oder eine kürzere Zeit",
  "back to °C": "zurück in °C",
  "Fault current that a conductor stands": "Fehlerstrom, den ein Leiter aushält",
  "Faults of at most 5 s. k is 115 for PVC of 70 °C, 100 of 90 °C, 143 for cross-linked polyethylene; about 87 by calculation for a 105 °C PVC boat cable. Use the fuse's total clearing time. With legs side by side each must stand the fault alone. Look also at the least fault current, of a cold or weak battery: it may blow a large fuse too slowly.":
    "Fehler von höchstens 5 s. k ist 115 für PVC von 70 °C, 100 von 90 °C, 143 für vernetztes Polyethylen; nach Rechnung etwa 87 für ein PVC-Bootskabel von 105 °C. Nehmen Sie die gesamte Abschaltzeit der Sicherung. Bei Schenkeln nebeneinander muss jeder den Fehler allein aushalten. Sehen Sie auch auf den kleinsten Fehlerstrom einer kalten oder schwachen Batterie: Er kann eine große Sicherung zu langsam auslösen.",
  "A battery drives thousands of amperes through a slipped spanner: take the negative off first, cover live studs, wear no metal (29 CFR 1915.181, ISO 13297). Local codes and licensed practice decide.":
    "Eine Batterie treibt Tausende Ampere durch einen abgerutschten Schraubenschlüssel: zuerst den Minuspol abnehmen, spannungführende Bolzen abdecken, kein Metall tragen (29 CFR 1915.181, ISO 13297). Maßgebend sind örtliche Regeln und zugelassene Fachleute.",
  "cross-section of one conductor": "Querschnitt eines Leiters",
  "until the fuse has cleared": "bis die Sicherung abgeschaltet hat",
  k: "k",
  "factor of copper and insulation, A√s/mm2": "Faktor von Kupfer und Isolierung, A√s/mm2",
  "unit of k": "Einheit von k",
  "all heat stays in the copper": "alle Wärme bleibt im Kupfer",
  "Inner resistance of a cold battery, from its cranking current":
    "Innenwiderstand einer kalten Batterie, aus ihrem Kaltstartstrom",
  "An estimate, ±30 %, for -18 °C and 30 s by the test of SAE J537; other cranking ratings end at other voltages. Take it as it stands for sag and for the least fault current; warm, the resistance is about 0.4 of it, which is the case for breaking capacity. A measured resistance of the bank is better than either.":
    "Eine Schätzung, ±30 %, für -18 °C und 30 s nach der Prüfung von SAE J537; andere Startangaben enden bei anderen Spannungen. Nehmen Sie ihn, wie er ist, für den Spannungseinbruch und den kleinsten Fehlerstrom; warm ist der Widerstand etwa 0,4 davon, der Fall für das Schaltvermögen. Ein gemessener Widerstand der Bank ist besser als beides.",
  cranking: "Kaltstart",
  "cold cranking current": "Kaltstartstrom",
  cells: "Zellen",
  "cells in series": "Zellen in Reihe",
  rest: "Ruhe",
  "of a cell at rest": "einer Zelle in Ruhe",
  "of a cell at the end of the cranking test": "einer Zelle am Ende der Startprüfung",
  "end: {end} V is not below the {rest} V of a cell at rest":
    "Ende: {end} V liegt nicht unter den {rest} V einer Zelle in Ruhe",
  "what the cells lose in the test, over its current": "was die Zellen in der Prüfung verlieren, durch ihren Strom",
  "Inner resistance of a bank of equal batteries": "Innenwiderstand einer Bank gleicher Batterien",
  "Equal batteries of equal age and charge. Strings side by side add their fault currents, batteries in series do not. The links between the batteries are not included.":
    "Gleiche Batterien gleichen Alters und Ladestands. Stränge nebeneinander addieren ihre Fehlerströme, Batterien in Reihe nicht. Die Verbinder zwischen den Batterien sind nicht enthalten.",
  resistance: "Widerstand",
  "of one battery": "einer Batterie",
  series: "Reihe",
  "batteries in a string": "Batterien in einem Strang",
  "strings side by side": "Stränge nebeneinander",
  "strings add, strings side by side share": "Batterien im Strang addieren sich, Stränge nebeneinander teilen",
  "Hours that a battery gives a current": "Stunden, die eine Batterie einen Strom gibt",
  "A full battery at one steady current, down to about 5 min. Capacity without its rated time gives nonsense: 100 Ah at 20 h, exponent 1.2 and 5 A is 20 h, not the 14.5 h of the shortened form. For a thruster the voltage sags out of use before the ampere-hours are gone: hold the volts at the motor first.":
    "Eine volle Batterie bei einem stetigen Strom, bis herab zu etwa 5 min. Kapazität ohne ihre Nennzeit ergibt Unsinn: 100 Ah bei 20 h, Exponent 1,2 und 5 A sind 20 h, nicht die 14,5 h der verkürzten Form. Bei einem Strahlruder bricht die Spannung ein, bevor die Amperestunden verbraucht sind: Sehen Sie zuerst auf die Spannung am Motor.",
  capacity: "Kapazität",
  "at the rated time": "bei der Nennzeit",
  "time that the capacity is stated for, often 20 h": "Zeit, für die die Kapazität angegeben ist, oft 20 h",
  "Peukert's exponent, lead-acid 1.1 to 1.35": "Peukert-Exponent, Blei-Säure 1,1 bis 1,35",
  "steady discharge": "stetige Entladung",
  "at capacity/rated amperes the answer is the rated time":
    "bei Kapazität durch Nennzeit Ampere ist die Antwort die Nennzeit",
  "Current into a dead short": "Strom in einen satten Kurzschluss",
  "Steady value. Hold a breaking capacity against the larger of this with the warm battery (about 0.4 of its cold resistance) and ten times its ampere-hours; small sealed batteries of high rate give more. Hold the fuse's clearing time against the least: cold battery and the whole cable. A 32 V strip fuse to ISO 8820-5 breaks 2 kA only, so breaking capacity is a check of its own.":
    "Dauerwert. Halten Sie ein Schaltvermögen gegen das Größere aus diesem mit warmer Batterie (etwa 0,4 ihres kalten Widerstands) und dem Zehnfachen ihrer Amperestunden; kleine verschlossene Hochstrombatterien geben mehr. Halten Sie die Abschaltzeit der Sicherung gegen das Kleinste: kalte Batterie und das ganze Kabel. Eine 32-V-Streifensicherung nach ISO 8820-5 schaltet nur 2 kA, das Schaltvermögen ist also ein eigener Nachweis.",
  "of the battery at rest": "der Batterie in Ruhe",
  "all of the loop: battery, links, cable": "alle der Schleife: Batterie, Verbinder, Kabel",
  "Speed of a permanent-magnet thruster motor on a sagging supply":
    "Drehzahl eines permanenterregten Strahlrudermotors an einbrechender Versorgung",
  "Speed over rated speed, for propeller torque with the square of speed and a magnet's constant field. Current is rated current × s², thrust share s². Sag makes a brushed motor draw less current, not more: a constant-power model has the wrong sign. Brush drop, warm windings and saturation are left out; state the voltage that the rated current belongs to. A stalled motor draws open/(motor + outside).":
    "Drehzahl zur Nenndrehzahl, für ein Propellermoment mit dem Quadrat der Drehzahl und das feste Feld eines Magneten. Der Strom ist Nennstrom × s², der Schubanteil s². Ein Einbruch lässt einen Bürstenmotor weniger Strom ziehen, nicht mehr: Ein Modell konstanter Leistung hat das falsche Vorzeichen. Bürstenabfall, warme Wicklungen und Sättigung sind weggelassen; geben Sie die Spannung an, zu der der Nennstrom gehört. Ein blockierter Motor zieht offen/(Motor + außen).",
  "A thruster motor can start by itself: isolate, lock and tag before a hand goes into the tunnel (29 CFR 1915.89). Local codes and licensed practice decide.":
    "Ein Strahlrudermotor kann von selbst anlaufen: trennen, abschließen und kennzeichnen, bevor eine Hand in den Tunnel geht (29 CFR 1915.89). Maßgebend sind örtliche Regeln und zugelassene Fachleute.",
  "battery at rest": "Batterie in Ruhe",
  "battery, conductors, joints, isolator and fuse together":
    "Batterie, Leiter, Verbindungen, Trennschalter und Sicherung zusammen",
  "rated volts": "Nennspannung",
  "at the motor's terminals at its rated current": "an den Motorklemmen bei Nennstrom",
  "rated current": "Nennstrom",
  "at that voltage": "bei dieser Spannung",
  motor: "Motor",
  "winding and brushes": "Wicklung und Bürsten",
  "voltage that turns the motor at its rated point": "Spannung, die den Motor in seinem Nennpunkt dreht",
  "motor: {motor} ohm at {ratedCurrent} A takes all of the rated {ratedVolts} V, allowed is less than their quotient":
    "Motor: {motor} ohm bei {ratedCurrent} A nehmen die ganze Nennspannung von {ratedVolts} V, erlaubt ist weniger als ihr Quotient",
  "lost in all resistances at rated current": "in allen Widerständen bei Nennstrom verloren",
  "positive root of a·s² + k·s = open, in the form that does not cancel":
    "positive Wurzel von a·s² + k·s = offen, in der Form, die sich nicht auslöscht",
  "Speed of a series-wound thruster motor on a sagging supply":
    "Drehzahl eines Reihenschluss-Strahlrudermotors an einbrechender Versorgung",
  "Speed over rated speed, for propeller torque with the square of speed and a field that follows the current. Current is rated current × s, thrust share s². Sag makes a brushed motor draw less current, not more: a constant-power model has the wrong sign. Iron saturation brings a real series motor nearer to MOTOR.SPEEDPM; brush drop and warm windings are left out. A stalled motor draws open/(motor + outside).":
    "Drehzahl zur Nenndrehzahl, für ein Propellermoment mit dem Quadrat der Drehzahl und ein Feld, das dem Strom folgt. Der Strom ist Nennstrom × s, der Schubanteil s². Ein Einbruch lässt einen Bürstenmotor weniger Strom ziehen, nicht mehr: Ein Modell konstanter Leistung hat das falsche Vorzeichen. Eisensättigung bringt einen wirklichen Reihenschlussmotor näher an MOTOR.SPEEDPM; Bürstenabfall und warme Wicklungen sind weggelassen. Ein blockierter Motor zieht offen/(Motor + außen).",
  "positive root of k·s² + a·s = open, in the form that does not cancel":
    "positive Wurzel von k·s² + a·s = offen, in der Form, die sich nicht auslöscht",
  "Next standard fuse rating": "Nächste genormte Sicherung",
  "Rating only. 33 CFR 183.455 lets it reach 150 % of the conductor's current below 50 V, other rules 100 %: choose one and show which. Its time-current curve must hold for the longest run, its breaking capacity must cover the fault (a 32 V strip fuse to ISO 8820-5 breaks 2 kA only). The series R10 is from memory.":
    "Nur der Nennwert. 33 CFR 183.455 lässt ihn unter 50 V bis 150 % des Leiterstroms reichen, andere Regeln 100 %: Wählen Sie eine und zeigen Sie, welche. Ihre Zeit-Strom-Kurve muss den längsten Lauf halten, ihr Schaltvermögen den Fehler decken (eine 32-V-Streifensicherung nach ISO 8820-5 schaltet nur 2 kA). Die Reihe R10 ist aus dem Gedächtnis.",
  "that the fuse must carry": "den die Sicherung tragen muss",
  "which list of ratings": "welche Liste der Nennwerte",
  "first rating that is not below the current": "erster Nennwert, der nicht unter dem Strom liegt",
  "NEC standard fuse ratings": "genormte Sicherungen nach NEC",
  "R10 fuse ratings": "Sicherungen nach R10",
  "Pull that a crimped lug must hold": "Zug, den ein gecrimpter Kabelschuh halten muss",
  "Copper conductor and lug, on a sample made with the same tool and die. UL 486A by gauge asks about a third of it at like size; the table of that pull-out is on the Tables page. A crimp that holds may still have a poor joint: measure its voltage drop as well.":
    "Kupferleiter und Kabelschuh, an einer Probe mit demselben Werkzeug und Gesenk. UL 486A nach Drahtnummer verlangt bei gleicher Größe etwa ein Drittel davon; die Tabelle dieses Auszugs steht auf der Seite Tables. Ein Crimp, der hält, kann trotzdem schlecht verbunden sein: Messen Sie auch seinen Spannungsabfall.",
  "A lug that lets go of a live conductor sparks and sets fire: pull samples on a bench, behind a guard, never a lug in service (IEC 61238-1, UL 486A). Local codes and licensed practice decide.":
    "Ein Kabelschuh, der einen spannungführenden Leiter loslässt, funkt und zündet: Ziehen Sie Proben auf der Werkbank hinter einem Schutz, nie einen Kabelschuh im Betrieb (IEC 61238-1, UL 486A). Maßgebend sind örtliche Regeln und zugelassene Fachleute.",
  "copper in the barrel": "Kupfer in der Hülse",
  copper: "Kupfer",
  "highest pull of the test": "höchster Zug der Prüfung",
  "by area, up to the cap": "nach Fläche, bis zur Obergrenze",
  "Air that a battery needs while it is charged": "Luft, die eine Batterie beim Laden braucht",
  "Lead-acid, stationary rule: 1 mA/Ah for sealed batteries on float; 8 for sealed and 20 for vented on boost are from memory; a battery that is cycled gasses about ten times as much as on float. Strings side by side count with their whole capacity. Charging sets the need, the thruster's run does not.":
    "Blei-Säure, Regel für ortsfeste Anlagen: 1 mA/Ah für verschlossene Batterien in Erhaltung; 8 für verschlossene und 20 für offene bei Starkladung sind aus dem Gedächtnis; eine zyklisch betriebene Batterie gast etwa zehnmal so viel wie in Erhaltung. Stränge nebeneinander zählen mit ihrer ganzen Kapazität. Das Laden bestimmt den Bedarf, nicht der Lauf des Strahlruders.",
  "Charging a battery gives off hydrogen, which a spark sets off: lead it out of the boat, keep switches and fuses out of the battery space, cover live studs (33 CFR 183.420, EN 50272-2). Local codes and licensed practice decide.":
    "Beim Laden gibt eine Batterie Wasserstoff ab, den ein Funke zündet: Führen Sie ihn aus dem Boot, halten Sie Schalter und Sicherungen aus dem Batterieraum, decken Sie spannungführende Bolzen ab (33 CFR 183.420, EN 50272-2). Maßgebend sind örtliche Regeln und zugelassene Fachleute.",
  gassing: "Gasung",
  "gassing current for each Ah": "Gasungsstrom je Ah",
  "of the string": "des Strangs",
  "air for each cell and ampere: dilution 24, 0.00042 m3 of hydrogen for each Ah, safety 5":
    "Luft je Zelle und Ampere: Verdünnung 24, 0,00042 m3 Wasserstoff je Ah, Sicherheit 5",
  "milliamperes in an ampere": "Milliampere in einem Ampere",
  "current that goes into gas": "Strom, der in Gas geht",
  "air that keeps the gas thin": "Luft, die das Gas dünn hält",
  "Size of each of two vents of a battery space": "Größe jeder von zwei Öffnungen eines Batterieraums",
  "Free area of each of two openings, low on one side and high on the other, to the open air; a grille takes part of it away. Natural draught only. Rules for petrol vapour are other rules.":
    "Freie Fläche jeder von zwei Öffnungen, eine tief und gegenüber eine hoch, ins Freie; ein Gitter nimmt einen Teil weg. Nur natürlicher Zug. Regeln für Benzindampf sind andere Regeln.",
  air: "Luft",
  "as BATTERY.AIR gives it": "wie BATTERY.AIR sie gibt",
  "free area for each m3/h": "freie Fläche je m3/h",
  "natural draught through one opening low and one high": "natürlicher Zug durch eine tiefe und eine hohe Öffnung",
  "Least height of the oil header above the waterline": "Kleinste Höhe des Ölbehälters über der Wasserlinie",
  "Balance at rest: at this height oil and sea press alike, so put the header higher, and no higher than the seal's builder allows. Take the deepest loading and the heel in use; density of the oil at its working temperature.":
    "Gleichgewicht in Ruhe: In dieser Höhe drücken Öl und See gleich, setzen Sie den Behälter also höher, aber nicht höher, als der Hersteller der Dichtung erlaubt. Nehmen Sie die tiefste Beladung und die Krängung im Betrieb; Dichte des Öls bei Betriebstemperatur.",
  "Water finds a tired seal: stay on the slings until the bow is proved dry, with a pump at hand. Local codes and licensed practice decide.":
    "Wasser findet eine müde Dichtung: In den Gurten bleiben, bis der Bug nachweislich trocken ist, mit einer Pumpe zur Hand. Maßgebend sind örtliche Regeln und zugelassene Fachleute.",
  "waterline down to the shaft's seal, deep condition": "Wasserlinie bis zur Wellendichtung, tiefe Schwimmlage",
  oil: "Öl",
  "density of the oil": "Dichte des Öls",
  "density of the water": "Dichte des Wassers",
  "oil: {oil} kg/m3 is heavier than the water's {water} kg/m3 (allowed 700 up to the water's)":
    "Öl: {oil} kg/m3 ist schwerer als die {water} kg/m3 des Wassers (erlaubt 700 bis zu der des Wassers)",
  "oil is lighter, so its column must be longer": "Öl ist leichter, darum muss seine Säule länger sein",
  "Hours until an anode is used up": "Stunden, bis eine Anode verbraucht ist",
  "All of the mass given, at one steady current; change an anode at half its mass. A live terminal that touches the motor's case can take an anode in a day or two, then the leg behind it: hours instead of months point to a fault. The capacity of zinc is from memory of the named text.":
    "Die ganze angegebene Masse, bei einem stetigen Strom; wechseln Sie eine Anode bei halber Masse. Eine spannungführende Klemme, die das Motorgehäuse berührt, kann eine Anode in ein, zwei Tagen aufzehren, dann das Bein dahinter: Stunden statt Monate weisen auf einen Fehler. Die Kapazität von Zink ist aus dem Gedächtnis des genannten Textes.",
  mass: "Masse",
  "of anode that may be used": "der Anode, die verbraucht werden darf",
  "that it gives": "den sie gibt",
  "zinc 780, aluminium 2000": "Zink 780, Aluminium 2000",
  "grams in a kg": "Gramm in einem kg",
  "charge in the metal over current": "Ladung im Metall durch Strom",
};
