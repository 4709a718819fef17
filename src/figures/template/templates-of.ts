import { Fault } from "../../formula/fault";
import type { LiveNotebook } from "../../notebook/live";
import { say } from "../../words/say";
import { offsetPageOf, readOffsets } from "../offset-page";
import { Readings } from "../readings";
import { holeTemplate } from "./hole-template";
import type { Side, Template } from "./template";
import { curvedWrapTemplate, wrapTemplate } from "./wrap-template";

/**
 * The full-size templates of one option, drawn from the notebook as it stands: wrap templates and hole outlines, port
 * and starboard. Where a sheet of offsets is there, the wrap templates follow the curved side; the hole outline is
 * always that of the flat side, since a curved skin does not lie flat.
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
  const page = offsetPageOf(live, option);
  const offsets = page && readOffsets(live, page);
  if (typeof offsets === "string") read.miss(offsets);
  const station = read.has("Tunnel.hull_station") ? read.number("Tunnel.hull_station") : 0;
  const height = read.has("Tunnel.hull_height") ? read.number("Tunnel.hull_height") : 0;
  if (read.missing.length > 0) return { sentence: say`No templates for ${option}. ${read.missing.join("; ")}.` };
  const { halfBreadth: _, ...hole } = input;
  try {
    const wrap = (side: Side) =>
      typeof offsets === "object"
        ? curvedWrapTemplate({ outside: input.outside, station, height, ...offsets }, side)
        : wrapTemplate(input, side);
    return [wrap("port"), wrap("starboard"), holeTemplate(hole, "port"), holeTemplate(hole, "starboard")];
  } catch (problem) {
    if (!(problem instanceof Fault)) throw problem;
    return { sentence: say`No templates for ${option}. ${problem.sentence}.` };
  }
}
