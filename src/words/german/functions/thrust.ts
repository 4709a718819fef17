import type { Catalogue } from "../../catalogue";

/** Named functions of the family "Side force": titles, arguments, steps, limits. */
export const thrust: Catalogue = {
  "Thrust that balances a push about a held point": "Schub, der eine Kraft um einen gehaltenen Punkt ausgleicht",
  "The stern is held by a line, by engine and rudder or by a second thruster; a boat adrift still goes sideways. Below 0 the thrust is needed to the same side as the push. For the push that a thruster can balance, give its thrust as the push and change over the two places.":
    "Das Heck wird von einer Leine, von Maschine und Ruder oder einem zweiten Strahlruder gehalten; ein treibendes Boot wandert trotzdem seitwärts. Unter 0 wird der Schub zur selben Seite wie die Kraft gebraucht. Für die Kraft, die ein Strahlruder ausgleichen kann, geben Sie seinen Schub als Kraft und vertauschen die beiden Orte.",
  "side force to be balanced": "auszugleichende Querkraft",
  at: "bei",
  "where the push acts, from any one datum": "wo die Kraft angreift, von einem beliebigen Bezug aus",
  pivot: "Drehpunkt",
  "the point that is held, from the same datum": "der gehaltene Punkt, vom selben Bezug aus",
  thruster: "Strahlruder",
  "the tunnel's axis, from the same datum": "die Tunnelachse, vom selben Bezug aus",
  "thruster: {thruster} m is the pivot itself, where no thrust turns the boat":
    "Strahlruder: {thruster} m ist der Drehpunkt selbst, wo kein Schub das Boot dreht",
  "equal moments about the held point": "gleiche Momente um den gehaltenen Punkt",
  "Steady rate of turn on the spot": "Stetige Drehgeschwindigkeit auf der Stelle",
  "Steady turn in still air without headway, about midship; a boat that floats free turns about a point farther aft (THRUST.PIVOT) and 10 to 12 % slower. Keel and skeg are not in it.":
    "Stetige Drehung in ruhiger Luft ohne Fahrt, um Mitte Schiff; ein frei schwimmendes Boot dreht um einen Punkt weiter achtern (THRUST.PIVOT) und 10 bis 12 % langsamer. Kiel und Skeg sind nicht darin.",
  thrust: "Schub",
  "side force of the thruster": "Querschub des Strahlruders",
  arm: "Arm",
  "thruster ahead of midship": "Strahlruder vor Mitte Schiff",
  "degrees in a radian": "Grad in einem Radiant",
  "thrust times arm equals the drag of all strips; the integral of |x|³ over the length is L⁴/32":
    "Schub mal Arm gleicht dem Widerstand aller Streifen; das Integral von |x|³ über die Länge ist L⁴/32",
  "in degrees": "in Grad",
  "Point that a boat pushed at the bow turns about": "Punkt, um den ein am Bug geschobenes Boot dreht",
  "Steady turn of a free boat without headway, equal draught and drag along the length. Counted from midship in shares of the length, below 0 aft. Under headway the pivot moves forward.":
    "Stetige Drehung eines freien Boots ohne Fahrt, Tiefgang und Widerstand über die Länge gleich. Gezählt von Mitte Schiff in Anteilen der Länge, unter 0 achtern. Mit Fahrt voraus wandert der Drehpunkt nach vorn.",
  "arm share": "Armanteil",
  "thruster ahead of midship over the waterline length": "Strahlruder vor Mitte Schiff zur Länge der Wasserlinie",
  "drag of the strips balances the thrust in force and moment, by Newton's rule":
    "der Widerstand der Streifen gleicht den Schub in Kraft und Moment aus, nach Newtons Verfahren",
  "Most thrust that a power can make in a tunnel": "Größter Schub, den eine Leistung in einem Tunnel machen kann",
  "An upper bound without any loss; a real small tunnel unit makes about half of it. Thrust goes with (power·diameter)^(2/3): never carry a large ship's newtons per kilowatt to a small tunnel.":
    "Eine Obergrenze ohne jeden Verlust; eine wirkliche kleine Tunnelanlage macht etwa die Hälfte davon. Der Schub geht mit (Leistung·Durchmesser)^(2/3): Übertragen Sie nie die Newton je Kilowatt eines großen Schiffs auf einen kleinen Tunnel.",
  "Keep swimmers, lines and loose gear away from both ends of the tunnel; before anybody works at it the supply is isolated and locked off, as a propeller can start by itself. Local codes and licensed practice decide.":
    "Halten Sie Schwimmer, Leinen und lose Teile von beiden Tunnelenden fern; bevor jemand daran arbeitet, wird die Versorgung getrennt und abgeschlossen, denn ein Propeller kann von selbst anlaufen. Maßgebend sind örtliche Regeln und zugelassene Fachleute.",
  "power given to the water": "an das Wasser abgegebene Leistung",
  diameter: "Durchmesser",
  "inner diameter of the tunnel": "Innendurchmesser des Tunnels",
  "jet over disc area: 1 straight tunnel, 0.5 open propeller":
    "Strahl- zu Scheibenfläche: 1 gerader Tunnel, 0,5 freier Propeller",
  hub: "Nabe",
  "diameter of the hub over that of the tunnel": "Durchmesser der Nabe zu dem des Tunnels",
  "mm2 in a square metre": "mm2 in einem Quadratmeter",
  "disc less hub": "Scheibe ohne Nabe",
  "momentum and energy of the jet, speed taken out between them":
    "Impuls und Energie des Strahls, die Geschwindigkeit zwischen beiden herausgerechnet",
  "Thrust at rest from shaft power and the tunnel's losses": "Standschub aus Wellenleistung und Tunnelverlusten",
  "At rest, to judge whether a stated thrust is plausible. Part of it acts on the hull around the inlet, so rough or hidden inlets cost thrust even with the same motor. With headway the hull loses side force, the motor's load hardly changes.":
    "Im Stand, um zu beurteilen, ob ein angegebener Schub plausibel ist. Ein Teil wirkt am Rumpf rund um den Einlauf, darum kosten raue oder verdeckte Einläufe auch bei gleichem Motor Schub. Mit Fahrt verliert der Rumpf Querkraft, die Last des Motors ändert sich kaum.",
  "power at the propeller's shaft": "Leistung an der Propellerwelle",
  loss: "Verlust",
  "all losses of the tunnel, from TUNNEL.LOSS": "alle Verluste des Tunnels, aus TUNNEL.LOSS",
  efficiency: "Wirkungsgrad",
  "of the propeller as a pump": "des Propellers als Pumpe",
  "power that is left in the jet": "Leistung, die im Strahl bleibt",
  "momentum of that jet": "Impuls dieses Strahls",
  "Merit of a stated thrust": "Güte eines angegebenen Schubs",
  "An ideal tunnel has 2, an ideal open propeller 1.414; a real tunnel unit stays well below. Where a statement comes near 2, ask which power and which thrust were meant.":
    "Ein idealer Tunnel hat 2, ein idealer freier Propeller 1,414; eine wirkliche Tunnelanlage bleibt weit darunter. Kommt eine Angabe nahe an 2, fragen Sie, welche Leistung und welcher Schub gemeint waren.",
  "bore of the tunnel, hub not taken off": "Bohrung des Tunnels, Nabe nicht abgezogen",
  "thrust to the power 3/2 over power and bore": "Schub hoch 3/2 durch Leistung und Bohrung",
  "Speed of the water in the tunnel": "Geschwindigkeit des Wassers im Tunnel",
  "At rest, evenly spread jet. Boat speed over this speed tells how much headway weakens the thruster: at about 0.2 one ship model had lost half its turning moment.":
    "Im Stand, gleichmäßig verteilter Strahl. Bootsgeschwindigkeit zu dieser Geschwindigkeit sagt, wie sehr Fahrt das Strahlruder schwächt: bei etwa 0,2 hatte ein Schiffsmodell die Hälfte seines Drehmoments verloren.",
  "section of the jet": "Querschnitt des Strahls",
  "thrust is the momentum that the jet carries away": "der Schub ist der Impuls, den der Strahl fortträgt",
};
