// One chain from measured hull to price: parting it would only hide that it is one calculation.
import type { Hull } from "./hull";
import * as rule from "./rules";
import {
  between,
  drag,
  engineFactor,
  entry,
  flexible,
  fractions,
  fuses,
  gaugeAmps,
  shipAmps,
  upperWind,
  viscosity,
} from "./tables";

/** The rows that the chain by hand works out, in this order; trim_01 to trim_24 follow. */
export const rowsByHand = [
  ...["Boat.entrance", "Boat.flare", "Boat.apart", "Supply.R_outside", "Supply.speed", "Supply.I_motor"],
  ...["Supply.V_motor", "Supply.volts_ok", "Supply.thrust_left", "Supply.drop", "Supply.drop_ok", "Supply.T_second"],
  ...["Supply.warm_ok", "Supply.fuse", "Supply.fuse_ok", "Supply.fault_most", "Supply.fault_least", "Supply.clear_ok"],
  ...["Supply.withstand_ok", "Supply.used", "Supply.endurance", "Supply.charge_time", "Supply.opening"],
  ...["Side force.push", "Side force.hold", "Side force.yaw", "Side force.adrift", "Side force.thrust"],
  ...["Side force.need", "Side force.thrust_ok", "Side force.wind_held", "Side force.water_density"],
  ...["Side force.turn", "Side force.current_push", "Side force.jet", "Tunnel.cover_light_ok", "Tunnel.stock"],
  ...["Tunnel.edge", "Tunnel.friction", "Tunnel.static", "Tunnel.back_face", "Tunnel.recess_length", "Tunnel.water"],
  ...["Joint.plies_in", "Joint.plies_out", "Joint.ground_volume", "Joint.fillet", "Joint.area_in", "Joint.area_out"],
  ...["Joint.ply_area", "Joint.resin", "Joint.portions", "Joint.hardener_portion", "Estimate.hours_mean"],
  ...["Estimate.hours_spread", "Estimate.materials", "Estimate.days", "Estimate.base", "Estimate.contingency"],
  ...["Estimate.price_80", "Estimate.ceiling_ok", "Compare.price_thrust"],
  ...Array.from({ length: 24 }, (_, i) => `Tunnel.trim_${String(i + 1).padStart(2, "0")}`),
];

const radian = Math.PI / 180;

function supplyOf({ supply }: Hull) {
  const bank =
    (((supply.cells * (supply.cell_rest - supply.cell_end)) / supply.cranking) * supply.series) / supply.parallel;
  const perMetre = ((flexible.get(supply.area) as number) / 1000) * (1 + 0.00393 * (supply.T_cond - 20));
  const conductors = (perMetre * supply.run) / supply.legs;
  const outside =
    bank * 1000 +
    conductors * 1000 +
    supply.joints * supply.joint_good +
    supply.R_isolator +
    supply.R_fuse +
    supply.R_relay;
  const open = supply.cells * supply.cell_rest * supply.series;
  const isSeries = supply.motor_kind === "series";
  const back = supply.V_rated - (supply.R_motor / 1000) * supply.I_run;
  const loss = ((supply.R_motor + outside) / 1000) * supply.I_run;
  const speed = isSeries
    ? (2 * open) / (loss + Math.sqrt(loss * loss + 4 * back * open))
    : (2 * open) / (back + Math.sqrt(back * back + 4 * loss * open));
  const current = isSeries ? supply.I_run * speed : supply.I_run * speed * speed;
  const motorVolts = open - (current * outside) / 1000;
  const drop = conductors * supply.I_run;
  const byShip = supply.carry_rule === "ship table";
  const gaugeCarry = gaugeAmps.get(supply.insulation)?.get(supply.gauge) as number;
  const carry = byShip
    ? (shipAmps.get(supply.ship_class)?.get(supply.area) as number) *
      Math.sqrt((supply.ship_class - supply.ship_ambient) / (supply.ship_class - 45)) *
      supply.legs
    : (supply.engine_space ? gaugeCarry * (engineFactor.get(supply.insulation) as number) : gaugeCarry) * supply.legs;
  const rated = byShip ? supply.ship_class : supply.insulation;
  const base = byShip ? supply.ship_ambient : supply.us_ambient;
  const leg = supply.I_run / supply.legs;
  const { area, run_time: seconds, ambient } = supply;
  const first = rule.warm(area, leg, seconds, ambient, ambient, carry / supply.legs, rated, base);
  const second = rule.warm(area, leg, seconds, ambient, first, carry / supply.legs, rated, base);
  const fuse = fuses.get(supply.fuse_series)?.find((rating) => rating >= supply.I_run) as number;
  const capacity = supply.capacity_each * supply.parallel;
  const leastFault = open / (outside / 1000);
  const used = (current * seconds * supply.runs) / 3600;
  const air = 0.05 * supply.cells * supply.series * ((supply.gassing * capacity) / 1000);
  return {
    outside,
    speed,
    current,
    motorVolts,
    voltsOk: motorVolts / supply.V_rated - 1,
    thrustLeft: speed * speed,
    drop,
    dropOk: 1 - drop / (supply.drop_most * supply.V_nominal),
    second,
    warmOk: 1 - (second - ambient) / (supply.T_most - ambient),
    fuse,
    fuseOk: 1 - fuse / (supply.fuse_rule * carry),
    mostFault: Math.max(open / (bank * supply.warm_share), (supply.fault_per_Ah * capacity) / 1000),
    leastFault,
    clearOk: leastFault / (supply.clear_times * fuse) - 1,
    withstandOk: 1 - leastFault / ((supply.withstand_k * area) / Math.sqrt(supply.clear_time)),
    used,
    endurance: supply.rated_hours * (capacity / (current * supply.rated_hours)) ** supply.peukert * 60,
    chargeTime: (used * supply.charge_factor) / supply.charge_current,
    opening: 28 * air,
  };
}

/** Share of the wind of 10 m that is met lower down, squared. */
function atHeight(height: number): number {
  const share = (0.127 * Math.log(height) + 0.772) / (0.127 * Math.log(10) + 0.772);
  return share * share;
}

function sideForceOf({ boat, sideForce, tunnel }: Hull, thrustLeft: number) {
  const speed = sideForce.wind_by === "force" ? (upperWind.get(sideForce.force) as number) : sideForce.speed_given;
  const airDensity = 101_325 / (287.05287 * (sideForce.air_temperature + 273.15));
  const pressure = (airDensity / 2) * speed * speed;
  const isForecast = sideForce.convention === "forecast";
  const pushHull = pressure * sideForce.coefficient * boat.area_hull * (isForecast ? atHeight(boat.height_hull) : 1);
  const pushAbove = pressure * sideForce.coefficient * boat.area_above * (isForecast ? atHeight(boat.height_above) : 1);
  const push = pushHull + pushAbove;
  const ahead = (pushHull * boat.ahead_hull + pushAbove * boat.ahead_above) / push;
  const hold = (push * (ahead - sideForce.pivot)) / (boat.ahead_tunnel - sideForce.pivot);
  const area = boat.area_hull + boat.area_above;
  const midship = boat.length_overall / 2;
  const gamma = sideForce.wind_angle * radian;
  const endOn = sideForce.end_coefficient * sideForce.frontal_share;
  const across =
    (sideForce.coefficient * Math.sin(gamma)) /
    (1 - (sideForce.shape / 2) * (1 - endOn / sideForce.coefficient) * Math.sin(2 * gamma) ** 2);
  const turning = ((ahead - midship) / boat.length_overall - 0.18 * (gamma - Math.PI / 2)) * across;
  const factor = push / (pressure * sideForce.coefficient * area);
  const yaw = Math.abs(pressure * turning * area * boat.length_overall) * factor;
  const adrift = yaw / (boat.ahead_tunnel - boat.ahead_lateral);
  const thrust = sideForce.thrust_stated * thrustLeft * sideForce.headway_factor;
  const need = Math.max(hold, adrift);
  const sea = rule.seaDensity(sideForce.water_temperature, sideForce.salinity);
  const crossFlow = between(drag, boat.beam_waterline / (2 * boat.draught_hull));
  const long = boat.length_waterline;
  const swept = ((Math.PI * tunnel.diameter * tunnel.diameter) / 4) * (1 - tunnel.hub * tunnel.hub);
  return {
    push,
    hold,
    yaw,
    adrift,
    thrust,
    need,
    thrustOk: thrust / (need * sideForce.spare) - 1,
    windHeld: speed * Math.sqrt(thrust / need),
    sea,
    turn:
      Math.sqrt(
        (64 * thrust * (boat.ahead_tunnel - midship)) /
          (sea * crossFlow * boat.draught_hull * long * long * long * long),
      ) / radian,
    currentPush: (sea / 2) * sideForce.current * sideForce.current * long * boat.draught_hull * crossFlow,
    jet: Math.sqrt(sideForce.thrust_stated / (1025 * (swept / 1e6))),
  };
}

function tunnelOf(
  { boat, tunnel, supply, sideForce }: Hull,
  entrance: number,
  flare: number,
  sea: number,
  jet: number,
) {
  const { diameter } = tunnel;
  const outside = diameter + 2 * tunnel.wall;
  const slope = rule.shellSlope(entrance, flare);
  const length = 2 * boat.half_breadth;
  const friction = rule.friction(
    length,
    diameter,
    jet,
    tunnel.roughness,
    between(viscosity, sideForce.water_temperature),
  );
  const loss = 1 + between(entry, tunnel.edge_radius / diameter) + friction + tunnel.other_loss;
  const power = supply.V_rated * supply.I_run * supply.motor_efficiency;
  const swept = (((Math.PI * diameter * diameter) / 4) * (1 - tunnel.hub * tunnel.hub)) / 1e6;
  const jetPower = (tunnel.pump_efficiency * power) / loss;
  const backFace = diameter * Math.tan(entrance * radian);
  const fullRecess = backFace / (Math.tan((entrance + tunnel.recess_angle) * radian) - Math.tan(entrance * radian));
  const step = tunnel.full_turn / tunnel.points;
  return {
    outside,
    slope,
    length,
    coverOk: (boat.draught_light - tunnel.axis_height - diameter / 2) / diameter / tunnel.immersion_least - 1,
    stock: 2 * (boat.half_breadth + (outside / 2) * slope + tunnel.allowance),
    edge: rule.holeEdge(outside, slope),
    long: outside * Math.sqrt(1 + slope * slope),
    friction,
    static: (4 * sea * swept * jetPower * jetPower) ** (1 / 3),
    backFace,
    recess: (fullRecess * tunnel.recess_depth) / backFace,
    water: sea * ((Math.PI * diameter * diameter) / 4 / 1e6) * (length / 1000),
    trim: Array.from({ length: 24 }, (_, i) => rule.trim(outside, entrance, flare, i * step)),
  };
}

function jointOf({ boat, joint, tunnel }: Hull, tube: ReturnType<typeof tunnelOf>) {
  const shell = boat.skin_out + boat.skin_in;
  const depth = shell / joint.bevel_sides;
  const simple = fractions.get("simple")?.get(joint.reinforcement) as number;
  const complex = fractions.get("complex")?.get(joint.reinforcement) as number;
  const ply = (joint.fabric / 1000) * (1 / joint.fibre_density + (1 - simple) / (simple * joint.resin_density));
  const pliesIn = rule.whole((1.5 * shell - shell + depth * (joint.bevel_sides - 1)) / ply);
  const pliesOut = rule.whole(depth / ply);
  const bevel = joint.bevel_ratio * depth;
  const ring = (((bevel * depth) / 2) * 2 * Math.PI * (tube.long / 2 + bevel / 3)) / 1000;
  const fillet = rule.filletMillilitres(joint.fillet_radius, tube.edge, tube.slope) * joint.ends;
  const areaIn = rule.plyArea(tube.outside, tube.edge, joint.leg_first, joint.leg_step, pliesIn) * joint.ends;
  const areaOut = rule.plyArea(tunnel.diameter, tube.edge, joint.out_first, joint.out_step, pliesOut) * joint.ends;
  const plyArea = areaIn + areaOut + ((tube.recess * tunnel.diameter) / 1e6) * joint.ends * joint.end_plies;
  const wet = (plyArea * ((joint.fabric * (1 - complex)) / complex)) / 1000;
  const core = boat.core > 0 ? rule.band(tube.edge, joint.core_ring) * joint.ends * boat.core * 1000 : 0;
  const filler = ((fillet + core) / 1000) * joint.filler_density;
  const resin = wet + filler * joint.filler_share;
  const pot = joint.pot_25 * 2 ** ((25 - joint.shop) / 10);
  const portion = Math.min(joint.portion_cap, joint.pot_share * joint.rate * pot);
  return {
    pliesIn,
    pliesOut,
    ground: ring * joint.bevel_sides * joint.ends,
    fillet,
    areaIn,
    areaOut,
    plyArea,
    filler,
    resin,
    portions: rule.whole(resin / portion),
    hardener: (portion * joint.hardener_parts) / (joint.resin_parts + joint.hardener_parts),
    groundArea: rule.band(tube.edge, bevel) * joint.bevel_sides * joint.ends,
  };
}

function estimateOf(hull: Hull, tube: ReturnType<typeof tunnelOf>, laid: ReturnType<typeof jointOf>) {
  const { boat, supply, tunnel, joint, estimate, hours } = hull;
  let [mean, squares, spreads, likely] = [0, 0, 0, 0];
  for (const one of hours) {
    const spread = (one.high - one.low) / 6;
    mean += (one.low + 4 * one.likely + one.high) / 6;
    squares += spread * spread;
    spreads += spread;
    likely += one.likely;
  }
  const spread = Math.sqrt((1 - estimate.common) * squares + estimate.common * spreads * spreads);
  const glass = (laid.plyArea * joint.fabric) / 1000;
  const rolls = rule.whole((glass * (1 + joint.glass_waste)) / joint.glass_pack);
  const packs = rule.whole((laid.resin * (1 + joint.resin_waste)) / joint.resin_pack);
  const laminate =
    rolls * joint.glass_pack * estimate.price_glass +
    packs * joint.resin_pack * estimate.price_resin +
    laid.filler * (1 + joint.resin_waste) * estimate.price_filler;
  const coat = (Math.PI * tunnel.diameter * tube.length) / 1e6 + laid.groundArea;
  const materials =
    laminate * (1 + estimate.consumables) +
    (tube.stock / 1000) * estimate.price_tube +
    supply.run * supply.legs * estimate.price_conductor +
    supply.joints * supply.legs * estimate.price_lug +
    (estimate.scope_coating === "in" ? coat * estimate.price_coating : 0) +
    estimate.cost_protection;
  const days = mean / (estimate.crew * estimate.day_hours) + (estimate.cures * estimate.cure) / estimate.day;
  const yard =
    (estimate.scope_haul === "in" ? boat.length_overall * estimate.price_haul : 0) +
    days * estimate.price_day +
    (estimate.scope_waste === "in" ? estimate.price_waste : 0);
  const equipment =
    estimate.cost_unit +
    (estimate.scope_batteries === "in" ? supply.series * supply.parallel * estimate.price_battery : 0) +
    (estimate.scope_charger === "in" ? estimate.price_charger : 0);
  const fixed = yard + materials + equipment + estimate.subcontract;
  const base = likely * estimate.rate + fixed;
  const costSpread = Math.sqrt((spread * estimate.rate) ** 2 + (estimate.materials_spread * materials) ** 2);
  const costly = mean * estimate.rate + fixed + rule.normalMiddle(estimate.share_80) * costSpread;
  const price = costly * (1 + estimate.markup);
  return {
    mean,
    spread,
    materials,
    days,
    base,
    contingency: costly - base,
    price,
    ceilingOk: 1 - (price * (1 + estimate.tax)) / estimate.ceiling,
  };
}

/** Everything of `rowsByHand` for one hull. */
export function chainByHand(hull: Hull): number[] {
  const { boat } = hull;
  const entrance = rule.slopeDegrees(boat.off_aft, boat.off_fore, boat.along_spacing);
  const flare = rule.slopeDegrees(boat.off_above, boat.off_below, boat.up_spacing);
  const apart = Math.sqrt(
    (rule.along(boat.first_out, boat.second_out, boat.base_out) -
      rule.along(boat.first_in, boat.second_in, boat.base_in)) **
      2 +
      (rule.away(boat.first_out, boat.second_out, boat.base_out) -
        rule.away(boat.first_in, boat.second_in, boat.base_in)) **
        2,
  );
  const supply = supplyOf(hull);
  const force = sideForceOf(hull, supply.thrustLeft);
  const tube = tunnelOf(hull, entrance, flare, force.sea, force.jet);
  const laid = jointOf(hull, tube);
  const cost = estimateOf(hull, tube, laid);
  const results = [
    entrance,
    flare,
    apart,
    supply.outside,
    supply.speed,
    supply.current,
    supply.motorVolts,
    supply.voltsOk,
    supply.thrustLeft,
    supply.drop,
    supply.dropOk,
    supply.second,
    supply.warmOk,
    supply.fuse,
    supply.fuseOk,
    supply.mostFault,
    supply.leastFault,
    supply.clearOk,
    supply.withstandOk,
    supply.used,
    supply.endurance,
    supply.chargeTime,
    supply.opening,
    force.push,
    force.hold,
    force.yaw,
    force.adrift,
    force.thrust,
    force.need,
    force.thrustOk,
    force.windHeld,
    force.sea,
    force.turn,
    force.currentPush,
    force.jet,
    tube.coverOk,
    tube.stock,
    tube.edge,
    tube.friction,
    tube.static,
    tube.backFace,
    tube.recess,
    tube.water,
    laid.pliesIn,
    laid.pliesOut,
    laid.ground,
    laid.fillet,
    laid.areaIn,
    laid.areaOut,
    laid.plyArea,
    laid.resin,
    laid.portions,
    laid.hardener,
    cost.mean,
    cost.spread,
    cost.materials,
    cost.days,
    cost.base,
    cost.contingency,
    cost.price,
    cost.ceilingOk,
    cost.price / force.thrust,
  ];
  for (const one of tube.trim) results.push(one);
  return results;
}
