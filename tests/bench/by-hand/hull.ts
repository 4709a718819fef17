/** The typed cells of one hull that the chain by hand needs, page by page, under the keys of the notebook. */

const boat = [
  ...["off_aft", "off_fore", "along_spacing", "off_above", "off_below", "up_spacing", "first_out", "second_out"],
  ...["base_out", "first_in", "second_in", "base_in", "area_hull", "height_hull", "area_above", "height_above"],
  ...["ahead_hull", "ahead_above", "ahead_tunnel", "length_overall", "ahead_lateral", "length_waterline"],
  ...["draught_hull", "beam_waterline", "draught_light", "half_breadth", "skin_out", "skin_in", "core"],
] as const;
const supply = [
  ...["cranking", "cells", "cell_rest", "cell_end", "series", "parallel", "area", "run", "T_cond", "legs", "joints"],
  ...["joint_good", "R_isolator", "R_fuse", "R_relay", "V_rated", "I_run", "R_motor", "drop_most", "V_nominal"],
  ...["run_time", "ambient", "ship_class", "ship_ambient", "insulation", "us_ambient", "T_most", "fuse_rule"],
  ...["warm_share", "fault_per_Ah", "capacity_each", "clear_times", "clear_time", "withstand_k", "runs", "rated_hours"],
  ...["peukert", "charge_factor", "charge_current", "gassing", "motor_efficiency"],
] as const;
const supplyWords = ["motor_kind", "carry_rule", "gauge", "fuse_series"] as const;
const sideForce = [
  ...["force", "speed_given", "coefficient", "air_temperature", "pivot", "wind_angle", "end_coefficient", "shape"],
  ...["frontal_share", "thrust_stated", "headway_factor", "spare", "water_temperature", "salinity", "current"],
] as const;
const sideForceWords = ["wind_by", "convention"] as const;
const tunnel = [
  ...["diameter", "hub", "axis_height", "immersion_least", "wall", "allowance", "roughness", "edge_radius"],
  ...["other_loss", "pump_efficiency", "recess_angle", "recess_depth", "full_turn", "points"],
] as const;
const joint = [
  ...["bevel_sides", "fabric", "fibre_density", "resin_density", "bevel_ratio", "ends", "fillet_radius", "leg_first"],
  ...[
    "leg_step",
    "out_first",
    "out_step",
    "end_plies",
    "core_ring",
    "filler_density",
    "filler_share",
    "rate",
    "pot_25",
  ],
  ...["shop", "pot_share", "portion_cap", "resin_parts", "hardener_parts", "glass_waste", "glass_pack", "resin_waste"],
  ...["resin_pack"],
] as const;
const jointWords = ["reinforcement"] as const;
const estimate = [
  ...["common", "price_glass", "price_resin", "price_filler", "consumables", "price_tube", "price_conductor"],
  ...[
    "price_lug",
    "price_coating",
    "cost_protection",
    "crew",
    "day_hours",
    "cures",
    "cure",
    "day",
    "rate",
    "price_haul",
  ],
  ...["price_day", "price_waste", "cost_unit", "price_battery", "price_charger", "subcontract", "share_80"],
  ...["materials_spread", "markup", "tax", "ceiling"],
] as const;
const estimateWords = ["scope_coating", "scope_haul", "scope_waste", "scope_batteries", "scope_charger"] as const;
/** The operations of the job, in the order of the page. */
const operations = [
  ...["haul", "survey", "strip", "mark", "cut", "core", "dry_fit", "grind", "bond_in", "bond_out", "fair", "coat"],
  ...["mount", "electric", "control", "test", "close"],
] as const;

type Numbers<Names extends readonly string[]> = Readonly<Record<Names[number], number>>;
type Words<Names extends readonly string[]> = Readonly<Record<Names[number], string>>;

export interface Hull {
  readonly boat: Numbers<typeof boat>;
  readonly supply: Numbers<typeof supply> & Words<typeof supplyWords> & { readonly engine_space: boolean };
  readonly sideForce: Numbers<typeof sideForce> & Words<typeof sideForceWords>;
  readonly tunnel: Numbers<typeof tunnel>;
  readonly joint: Numbers<typeof joint> & Words<typeof jointWords>;
  readonly estimate: Numbers<typeof estimate> & Words<typeof estimateWords>;
  readonly hours: readonly { readonly low: number; readonly likely: number; readonly high: number }[];
}

/** A hull from values by address: `Supply.run`. @throws Error for one that is missing. */
export function hullOf(value: (address: string) => unknown): Hull {
  const number = (address: string): number => {
    const found = value(address);
    if (typeof found !== "number") throw new Error(`${address} is ${String(found)}`);
    return found;
  };
  const numbers = <Names extends readonly string[]>(page: string, names: Names): Numbers<Names> =>
    Object.fromEntries(names.map((name) => [name, number(`${page}.${name}`)])) as Numbers<Names>;
  const words = <Names extends readonly string[]>(page: string, names: Names): Words<Names> =>
    Object.fromEntries(names.map((name) => [name, String(value(`${page}.${name}`))])) as Words<Names>;
  const hull: Hull = {
    boat: numbers("Boat", boat),
    supply: {
      ...numbers("Supply", supply),
      ...words("Supply", supplyWords),
      engine_space: value("Supply.engine_space") === true,
    },
    sideForce: { ...numbers("Side force", sideForce), ...words("Side force", sideForceWords) },
    tunnel: numbers("Tunnel", tunnel),
    joint: { ...numbers("Joint", joint), ...words("Joint", jointWords) },
    estimate: { ...numbers("Estimate", estimate), ...words("Estimate", estimateWords) },
    hours: operations.map((name) => ({
      low: number(`Estimate.${name}_low`),
      likely: number(`Estimate.${name}_likely`),
      high: number(`Estimate.${name}_high`),
    })),
  };
  // Read back from text, all hulls have their fields in the same places, as objects of one class would.
  return JSON.parse(JSON.stringify(hull)) as Hull;
}
