import { callFunction } from "../formula/call";
import { awgArea } from "../functions/conductor/awg-area";
import { boatGauges } from "../tables/boat-gauges";
import { conductorResistance } from "../tables/conductor-resistance";

/**
 * Conductor sizes between mm2 and American gauges, for people who think in gauges. Neither way ever makes a
 * conductor look thicker than it is.
 */
const gauges = boatGauges.rows.map(([gauge]) => ({
  gauge: String(gauge),
  area: Number(callFunction(awgArea, [gauge])),
}));
const sizes = conductorResistance.rows.map(([size]) => Number(size));

/** The largest gauge that a size in mm2 is at least as thick as; undefined below 18 AWG. */
export const gaugeOf = (area: number): string | undefined => gauges.findLast((one) => one.area <= area)?.gauge;

/** The smallest IEC 60228 size in mm2 that is at least as thick as a gauge; undefined for what is no gauge. */
export function sizeOf(gauge: string): number | undefined {
  const area = gauges.find((one) => one.gauge === gauge)?.area;
  return area === undefined ? undefined : sizes.find((size) => size >= area);
}
