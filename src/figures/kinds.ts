// Where in a notebook each figure finds its numbers: the one place that knows keys. Long because it is one list.

import type { LiveNotebook } from "../notebook/live";
import { optionsOf } from "../notebook/model";
import { say } from "../words/say";
import { conductorWarmth } from "./conductor-warmth";
import { costSpread } from "./cost-spread";
import { cutLines } from "./cut-lines";
import { developedTube } from "./developed-tube";
import type { Figure } from "./figure";
import { fuseWindow } from "./fuse-window";
import { groundOutline } from "./ground-outline";
import { holeSquare } from "./hole-square";
import { hullSection } from "./hull-section";
import { jointPlies } from "./joint-plies";
import { motorSpace } from "./motor-space";
import { offsetPageOf, readOffsets } from "./offset-page";
import { optionsCompared } from "./options-compared";
import { pushAgainstWind } from "./push-against-wind";
import { Readings } from "./readings";
import { voltageBudget } from "./voltage-budget";
import { waterlineView } from "./waterline-view";

/** Reads a figure's numbers and draws it; the drawing is asked for only when every number was there. */
type Kind = (read: Readings, live: LiveNotebook, option: string) => () => Figure;

const end = (read: Readings) => ({
  outside: read.number("Tunnel.outside"),
  entrance: read.number("Boat.entrance"),
  flare: read.number("Boat.flare"),
});

/** The lines of the voltage budget in the order of the current's way; a notebook may leave some out. */
const lossRows = [
  ["battery", "Supply.U_bank"],
  ["conductors", "Supply.U_conductors"],
  ["joints", "Supply.U_joints"],
  ["isolator", "Supply.U_isolator"],
  ["fuse", "Supply.U_fuse"],
  ["relay", "Supply.U_relay"],
] as const;

export const kinds = {
  "hull section": (read) => {
    const input = {
      diameter: read.number("Tunnel.diameter"),
      wall: read.number("Tunnel.wall"),
      halfBreadth: read.number("Boat.half_breadth"),
      flare: read.number("Boat.flare"),
      skin: read.number("Boat.thickness"),
      axisHeight: read.number("Tunnel.axis_height"),
      axisLight: read.number("Tunnel.axis_light"),
      axisDeep: read.number("Tunnel.axis_deep"),
      immersionLeast: read.number("Tunnel.immersion_least"),
      motorHeight: read.number("Fit.motor_height"),
      motorRadius: read.number("Fit.motor_radius"),
      lean: read.number("Fit.lean"),
      headroom: read.number("Boat.headroom"),
    };
    return () => hullSection(input);
  },
  "waterline view": (read) => {
    const input = {
      diameter: read.number("Tunnel.diameter"),
      wall: read.number("Tunnel.wall"),
      halfBreadth: read.number("Boat.half_breadth"),
      entrance: read.number("Boat.entrance"),
      measured: read.number("Boat.along_spacing"),
      behindStem: read.number("Boat.behind_stem"),
      recessDepth: read.number("Tunnel.recess_depth"),
      recessLength: read.number("Tunnel.recess_length"),
      deflector: read.number("Tunnel.deflector"),
    };
    return () => waterlineView(input);
  },
  "hole square": (read) => {
    const input = end(read);
    return () => holeSquare(input);
  },
  "developed tube": (read) => {
    const input = end(read);
    return () => developedTube(input);
  },
  "cut lines": (read, live, option) => {
    const outside = read.number("Tunnel.outside");
    // Rows with the axis in the sheet's own count are wanted only where the sheet does not count from the axis.
    const station = read.has("Tunnel.hull_station") ? read.number("Tunnel.hull_station") : 0;
    const height = read.has("Tunnel.hull_height") ? read.number("Tunnel.hull_height") : 0;
    const page = offsetPageOf(live, option);
    const offsets = page ? readOffsets(live, page) : say`there is no sheet "Offsets ${option}"`;
    if (typeof offsets === "string") {
      read.miss(offsets);
      return () => ({ title: "", sentence: offsets });
    }
    return () => cutLines({ outside, station, height, ...offsets });
  },
  "motor space": (read) => {
    const input = {
      diameter: read.number("Tunnel.diameter"),
      wall: read.number("Tunnel.wall"),
      motorHeight: read.number("Fit.motor_height"),
      motorRadius: read.number("Fit.motor_radius"),
      headroom: read.number("Boat.headroom"),
      sideRoom: read.number("Boat.side_room"),
      leanMost: read.number("Fit.lean_most"),
    };
    return () => motorSpace(input);
  },
  "ground outline": (read) => {
    const input = {
      ...end(read),
      bevel: read.number("Joint.bevel_width"),
      leg: read.number("Joint.leg_longest"),
      frame: read.number("Boat.frame"),
      bulkhead: read.number("Boat.bulkhead"),
    };
    return () => groundOutline(input);
  },
  "joint plies": (read) => {
    const input = {
      shell: read.number("Joint.shell"),
      wall: read.number("Tunnel.wall"),
      ply: read.number("Joint.ply"),
      pliesIn: read.number("Joint.plies_in"),
      pliesOut: read.number("Joint.plies_out"),
      legFirst: read.number("Joint.leg_first"),
      legStep: read.number("Joint.leg_step"),
      outFirst: read.number("Joint.out_first"),
      outStep: read.number("Joint.out_step"),
      targetIn: read.number("Joint.target_in"),
      targetOut: read.number("Joint.target_out"),
      bevelDepth: read.number("Joint.bevel_depth"),
      bevelRatio: read.number("Joint.bevel_ratio"),
      filletRadius: read.number("Joint.fillet_radius"),
    };
    return () => jointPlies(input);
  },
  "voltage budget": (read) => {
    const input = {
      rest: read.number("Supply.V_open"),
      least: read.number("Supply.V_rated"),
      current: read.number("Supply.I_motor"),
      losses: lossRows
        .filter(([, address]) => read.has(address))
        .map(([what, address]) => ({ what, volts: read.number(address) })),
    };
    return () => voltageBudget(input);
  },
  "conductor warmth": (read) => {
    const legs = read.number("Supply.legs");
    const input = {
      area: read.number("Supply.area"),
      current: read.number("Supply.I_run") / legs,
      seconds: read.number("Supply.run_time"),
      ambient: read.number("Supply.ambient"),
      carry: read.number("Supply.carry") / legs,
      rated: read.number("Supply.warm_rated"),
      base: read.number("Supply.warm_base"),
      most: read.number("Supply.T_most"),
    };
    return () => conductorWarmth(input);
  },
  "fuse window": (read) => {
    const input = {
      current: read.number("Supply.I_run"),
      carry: read.number("Supply.carry"),
      share: read.number("Supply.fuse_rule"),
      fuse: read.number("Supply.fuse"),
    };
    return () => fuseWindow(input);
  },
  "push against wind": (read) => {
    const input = {
      wind: read.number("Side force.speed"),
      thrustNeeded: read.number("Side force.need"),
      spare: read.number("Side force.spare"),
      thrust: read.number("Side force.thrust"),
    };
    return () => pushAgainstWind(input);
  },
  "cost spread": (read) => {
    const input = {
      base: read.number("Estimate.base"),
      mean: read.number("Estimate.cost_mean"),
      spread: read.number("Estimate.cost_spread"),
      shareMiddle: read.number("Estimate.share_50"),
      shareContingency: read.number("Estimate.share_80"),
    };
    return () => costSpread(input);
  },
  "options compared": (_, live) => {
    const marks = optionsOf(live.notebook).flatMap((option) => {
      const read = new Readings(live, option);
      const mark = {
        option,
        price: read.number("Compare.price_80"),
        margin: read.number("Compare.thrust_ok"),
        short: read.number("Compare.short"),
        open: read.number("Compare.open"),
      };
      return read.missing.length === 0 ? [mark] : [];
    });
    return () => optionsCompared(marks);
  },
} as const satisfies Readonly<Record<string, Kind>>;

export type FigureName = keyof typeof kinds;
