import type { AnyDefinition } from "../formula/definition";
import { conductor } from "./conductor";
import { general } from "./general";
import { hours } from "./hours";
import { hull } from "./hull";
import { joint } from "./joint";
import { survey } from "./survey";
import { thrust } from "./thrust";
import { tunnel } from "./tunnel";
import { wind } from "./wind";

/** The one list of named functions, by family in the order of the job. */
export const families: Readonly<Record<string, readonly AnyDefinition[]>> = {
  "Wind, current, water, air": wind,
  "Side force": thrust,
  "Tunnel: place, flow, cut": tunnel,
  "Curved hull, from offsets": hull,
  Survey: survey,
  "Joint and laminate": joint,
  "Conductor and supply": conductor,
  "Hours and price": hours,
  General: general,
};

export const catalogue: readonly AnyDefinition[] = Object.values(families).flat();
