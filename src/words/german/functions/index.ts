import type { Catalogue } from "../../catalogue";
import { general } from "./general";
import { hours } from "./hours";
import { hull } from "./hull";
import { joint } from "./joint";
import { supply } from "./supply";
import { survey } from "./survey";
import { symbols } from "./symbols";
import { thrust } from "./thrust";
import { tunnel } from "./tunnel";
import { wind } from "./wind";

/** The named functions and the names of their families. A text that several families use stands with the first. */
export const functions: Catalogue = {
  "Wind, current, water, air": "Wind, Strömung, Wasser, Luft",
  "Side force": "Querkraft",
  "Tunnel: place, flow, cut": "Tunnel: Ort, Strömung, Zuschnitt",
  "Curved hull, from offsets": "Gewölbter Rumpf, aus Aufmaßen",
  Survey: "Aufmaß",
  "Joint and laminate": "Verbindung und Laminat",
  "Conductor and supply": "Leiter und Versorgung",
  "Hours and price": "Stunden und Preis",
  General: "Allgemein",
  ...wind,
  ...thrust,
  ...tunnel,
  ...hull,
  ...survey,
  ...joint,
  ...supply,
  ...hours,
  ...general,
  ...symbols,
};
