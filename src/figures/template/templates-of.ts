import { Fault } from "../../formula/fault";
import type { LiveNotebook } from "../../notebook/live";
import { Readings } from "../readings";
import { holeTemplate } from "./hole-template";
import type { Template } from "./template";
import { wrapTemplate } from "./wrap-template";

/**
 * The full-size templates of one option, drawn from the notebook as it stands: wrap templates and hole outlines, port
 * and starboard.
 *
 * @returns one sentence instead, where a number is missing or cannot be used.
 */
export function templatesOf(live: LiveNotebook, option: string): readonly Template[] | { readonly sentence: string } {
  const read = new Readings(live, option);
  const input = {
    outside: read.number("Tunnel.outside"),
    entrance: read.number("Boat.entrance"),
    flare: read.number("Boat.flare"),
    halfBreadth: read.number("Boat.half_breadth"),
  };
  if (read.missing.length > 0) return { sentence: `No templates for ${option}. ${read.missing.join("; ")}.` };
  const { halfBreadth: _, ...hole } = input;
  try {
    return [
      wrapTemplate(input, "port"),
      wrapTemplate(input, "starboard"),
      holeTemplate(hole, "port"),
      holeTemplate(hole, "starboard"),
    ];
  } catch (problem) {
    if (!(problem instanceof Fault)) throw problem;
    return { sentence: `No templates for ${option}. ${problem.sentence}.` };
  }
}
