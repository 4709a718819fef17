/**
 * The whole chain for one hull, the cruiser of the first worked notebook, by plain arithmetic: its measured and chosen
 * numbers, one line for each rule, the rule's source beside it. Nothing of the program's own functions takes part.
 */
import { expect, it } from "vitest";
import { openWorked, valueAt } from "./worked";

const chain: (readonly [row: string, worked: number, rule: string])[] = [];

function line(row: string, worked: number, rule: string): number {
  chain.push([row, worked, rule]);
  return worked;
}

const { PI, asin, atan, ceil, cos, exp, log10, max, min, sin, sqrt, tan } = Math;
const degrees = 180 / PI;

// Boat. Offsets 450, 360, 272 along the axis (400 mm from first to last), 452 and 265 up and down (200 mm).
const tanEntrance = (450 - 272) / 400;
const tanFlare = (452 - 265) / 200;
line("Boat.entrance", atan(tanEntrance) * degrees, "angle from two offsets");
line("Boat.flare", atan(tanFlare) * degrees, "angle from two offsets");
const alongOut = line("Boat.along_out", (905 ** 2 - 742 ** 2 + 1350 ** 2) / (2 * 1350), "two tapes: law of cosines");
const awayOut = line("Boat.away_out", sqrt(905 ** 2 - alongOut ** 2), "two tapes: Pythagoras");
const alongIn = (904 ** 2 - 744 ** 2 + 1351 ** 2) / (2 * 1351);
const awayIn = sqrt(904 ** 2 - alongIn ** 2);
line("Boat.apart", sqrt((alongOut - alongIn) ** 2 + (awayOut - awayIn) ** 2), "distance of two points");

// Supply, before the thrust that hangs on its volts. Two batteries of 100 Ah and 800 A cranking side by side.
const battery = line("Supply.R_battery", (6 * (2.1 - 1.2)) / 0.8, "SAE J537: 12.6 V at rest, 7.2 V at 800 A; mohm");
const bank = line("Supply.R_bank", battery / 2, "two in parallel");
const hot = 1 + 0.00393 * (50 - 20);
const conductors = line("Supply.R_conductors", 0.206 * 17 * hot, "IEC 60228 class 5, 95 mm2: 0.206 ohm/km; 17 m, 50 C");
const outside = line(
  "Supply.R_outside",
  bank + conductors + 12 * 0.03 + 0.1 + 0.25 + 0.25,
  "bank, conductors, 12 joints, isolator, fuse, relay",
);
// (Rm + Ro) Ir s2 + (Vr - Rm Ir) s - Vo = 0 with ohms: the motor turns s times its rated speed.
const a2 = ((4.2 + outside) / 1000) * 310;
const a1 = 10.5 - 0.0042 * 310;
const speedRatio = line(
  "Supply.speed",
  (-a1 + sqrt(a1 ** 2 + 4 * a2 * 12.6)) / (2 * a2),
  "permanent magnet machine and propeller load, root of a quadratic equation",
);
const current = line("Supply.I_motor", 310 * speedRatio ** 2, "current goes with torque, torque with speed squared");
const motorVolts = line("Supply.V_motor", 12.6 - (current * outside) / 1000, "Ohm's law");
line("Supply.volts_ok", motorVolts / 10.5 - 1, "volts over rated volts, less 1");
const thrustLeft = line("Supply.thrust_left", speedRatio ** 2, "thrust goes with speed squared");
const drop = line("Supply.drop", (310 * conductors) / 1000, "Ohm's law at the rated current");
line("Supply.drop_ok", 1 - drop / (0.1 * 12), "10 % of 12 V");
line("Supply.carry", 385, "33 CFR 183.425 Table 5: 3/0, 105 C");
// One metre of 95 mm2, IEC 60028: 1/58 ohm mm2/m. What it gives off follows from 385 A at 105 C in 30 C.
const metre = 1 / 58 / 95;
const giveOff = (385 ** 2 * metre * (1 + 0.00393 * (105 - 20))) / (105 - 30);
const b = giveOff - 310 ** 2 * metre * 0.00393;
const a = 310 ** 2 * metre * (1 - 20 * 0.00393) + 30 * giveOff;
const warm = (start: number) => a / b + (start - a / b) * exp((-b * 180) / (3.45 * 95));
const first = line("Supply.T_first", warm(30), "heat balance of a conductor, 310 A for 180 s from 30 C");
line("Supply.T_second", warm(first), "the same from the end of the first run");
line("Supply.fuse", 350, "NEC 240.6(A): 300, 350, 400 A; the first from 310 A up");
line("Supply.fuse_ok", 1 - 350 / (1.5 * 385), "33 CFR 183.455: 150 % of the table's current");
line("Supply.fault_most", max(12.6 / ((bank * 0.4) / 1000), 10 * 200), "Ohm's law warm, and 10 A for each Ah");
const leastFault = line("Supply.fault_least", 12.6 / (outside / 1000), "Ohm's law cold");
line("Supply.clear_ok", leastFault / (4 * 350) - 1, "four times the fuse's rating");
line("Supply.withstand", (100 * 95) / sqrt(5), "IEC 60364-5-54: k S / sqrt(t)");
const used = line("Supply.used", (current * 180 * 2) / 3600, "two runs of 180 s");
line("Supply.endurance", 20 * (200 / (current * 20)) ** 1.25 * 60, "Peukert, normalised to 20 h");
line("Supply.charge_time", (used * 1.2) / 25, "1.2 times the charge at 25 A");
const air = line("Supply.air", (0.05 * 6 * 8 * 200) / 1000, "EN 50272-2: 0.05 n I C / 1000");
line("Supply.opening", 28 * air, "EN 50272-2: 28 Q");

// Side force. Force 4; hull 15.1 m2 at 6.3 m, superstructure 9.4 m2 at 6.2 m ahead of the transom.
line("Side force.speed", 7.9, "WMO-No. 306: force 4 ends at 7.9 m/s");
const airDensity = line("Side force.air_density", 101325 / (287.05287 * 288.15), "ISO 2533: p / (R T)");
const pressure = line("Side force.pressure", 0.5 * airDensity * 7.9 ** 2, "half density times speed squared");
const pushHull = line("Side force.push_hull", pressure * 0.9 * 15.1, "Blendermann 1994: 0.9 for a speed boat");
const pushAbove = line("Side force.push_above", pressure * 0.9 * 9.4, "Blendermann 1994: 0.9 for a speed boat");
const push = pushHull + pushAbove;
const pushAhead = line("Side force.push_ahead", (pushHull * 6.3 + pushAbove * 6.2) / push, "weighted by push");
const hold = line("Side force.hold", (push * (pushAhead - 0.5)) / (10.5 - 0.5), "moments about the stern cleat");
const endOn = 0.55 * 0.38;
const cross = (0.9 * sin(PI / 4)) / (1 - (0.6 / 2) * (1 - endOn / 0.9));
const yawNumber = ((pushAhead - 6.05) / 12.1 - 0.18 * (PI / 4 - PI / 2)) * cross;
const yaw = line("Side force.yaw", pressure * yawNumber * 24.5 * 12.1, "Blendermann 1994, wind 45 degrees from ahead");
line("Side force.adrift", yaw / (10.5 - 5.4), "moment over arm");
const thrust = line("Side force.thrust", 590 * thrustLeft * 1, "stated thrust times what the volts leave");
line("Side force.thrust_ok", thrust / (hold * 1.1) - 1, "thrust over need and 1.1, less 1");
line("Side force.wind_held", 7.9 * sqrt(thrust / hold), "push goes with the wind squared");
const fresh =
  999.842594 +
  6.793952e-2 * 12 -
  9.09529e-3 * 12 ** 2 +
  1.001685e-4 * 12 ** 3 -
  1.120083e-6 * 12 ** 4 +
  6.536332e-9 * 12 ** 5;
const salt = 0.824493 - 4.0899e-3 * 12 + 7.6438e-5 * 12 ** 2 - 8.2467e-7 * 12 ** 3 + 5.3875e-9 * 12 ** 4;
const saltier = -5.72466e-3 + 1.0227e-4 * 12 - 1.6546e-6 * 12 ** 2;
const sea = line(
  "Side force.water_density",
  fresh + salt * 35 + saltier * 35 ** 1.5 + 4.8314e-4 * 35 ** 2,
  "EOS-80, UNESCO Tech. Pap. Mar. Sci. 36: 12 C, salinity 35",
);
const fullness = 3.6 / (2 * 0.85);
const crossFlow = line(
  "Side force.cross_flow",
  0.657076 + ((fullness - 1.85998) / (2.31288 - 1.85998)) * (0.630693 - 0.657076),
  "Hoerner's curve between 1.85998 and 2.31288",
);
line(
  "Side force.turn",
  sqrt((64 * thrust * (10.5 - 6.05)) / (sea * crossFlow * 0.85 * 11.2 ** 4)) * degrees,
  "thrust times arm equals the drag of all strips",
);
line("Side force.current_push", 0.5 * sea * 11.2 * 0.85 * 0.25 ** 2 * crossFlow, "cross-flow drag at 0.25 m/s");
const jet = line(
  "Side force.jet",
  sqrt(590 / (1025 * (PI / 4) * 0.185 ** 2 * (1 - 0.3 ** 2))),
  "momentum: sqrt(T / (rho A)), hub 0.3",
);

// Tunnel. 185 mm inside, 8 mm wall, half breadth 360 mm; axis 280 mm above the bottom, which is 440 mm deep light.
const cover = line("Tunnel.cover_light", 440 - 280 - 185 / 2, "axis depth less half the diameter");
line("Tunnel.cover_light_ok", cover / 185 / 0.5 - 1, "half a diameter, common practice");
const slope = line("Tunnel.slope", sqrt(tanEntrance ** 2 + tanFlare ** 2), "entrance and flare together");
const tube = 185 + 2 * 8;
const stock = line("Tunnel.stock", 2 * (360 + (tube / 2) * slope + 30), "longest lines and 30 mm on each end");
line("Tunnel.half_top", 360 + (tube / 2) * tanFlare, "flat side");
line("Tunnel.half_aft", 360 + (tube / 2) * tanEntrance, "flat side");
line("Tunnel.trim_07", (-tube / 2) * tanEntrance, "flat side, forward");
const long = line("Tunnel.hole_long", tube * sqrt(1 + slope ** 2), "ellipse in which a plane cuts a cylinder");
/** Perimeter of an ellipse by the arithmetic-geometric mean of its half axes (Gauss and Legendre). */
function perimeter(longHalf: number, shortHalf: number): number {
  let [x, y, sum, weight] = [longHalf, shortHalf, longHalf ** 2, 1 / 2];
  for (let step = 0; step < 8; step++) {
    sum -= weight * (x ** 2 - y ** 2);
    [x, y, weight] = [(x + y) / 2, sqrt(x * y), weight * 2];
  }
  return (2 * PI * sum) / x;
}
const edge = line("Tunnel.edge", perimeter(long / 2, tube / 2), "perimeter of that ellipse");
const inlet = line(
  "Tunnel.inlet",
  0.24 + ((10 / 185 - 0.04) / (0.06 - 0.04)) * (0.15 - 0.24),
  "Crane TP-410: 0.24 at 0.04, 0.15 at 0.06; 10 mm on 185 mm",
);
const reynolds = (jet * 0.185) / 1.2873e-6;
let root = 7;
for (let step = 0; step < 60; step++) root = -2 * log10(0.15 / 185 / 3.7 + (2.51 * root) / reynolds);
const friction = line(
  "Tunnel.friction",
  ((1 / root ** 2) * 720) / 185,
  "Colebrook, solved by repetition; ITTC viscosity",
);
const power = line("Tunnel.power", 10.5 * 310 * 0.75, "volts, current, efficiency of the motor");
const swept = (PI / 4) * 0.185 ** 2 * (1 - 0.3 ** 2);
line(
  "Tunnel.static",
  (4 * sea * swept * ((0.6 * power) / (1 + inlet + friction)) ** 2) ** (1 / 3),
  "momentum with losses; efficiency 0.6, common practice",
);
const face = line("Tunnel.back_face", 185 * tanEntrance, "strip of aft wall seen from ahead");
const recess = line(
  "Tunnel.recess_length",
  ((185 * tanEntrance) / (tan(atan(tanEntrance) + 12 / degrees) - tanEntrance)) * (52 / face),
  "recess floor 12 degrees steeper than the side, 52 mm deep",
);
line("Tunnel.water", sea * (PI / 4) * 0.185 ** 2 * 0.72, "volume of the tube times density");

// Joint. Hull laminate 6 + 3 mm, fabric 600 g/m2, half fibre by mass on a flat surface, 0.38 on a complex one.
const ply = line(
  "Joint.ply",
  0.6 * (1 / 2.56 + (1 - 0.5) / (0.5 * 1.2)),
  "ISO 12215-5:2008 Annex C eq. C.1 as a mixture",
);
const inside = line("Joint.plies_in", ceil((1.5 * 9 - 9) / ply), "class bar 1.5 t less the hull, in whole plies");
const outer = line("Joint.plies_out", ceil(9 / ply), "fills the bevel, in whole plies");
line(
  "Joint.ground_volume",
  ((PI * 12 * 9 ** 2 * (long / 2 + (12 * 9) / 3)) / 1000) * 2,
  "Pappus: bevel 12:1 through 9 mm, both ends",
);
const tilt = atan(slope);
let [section, arc] = [0, 0];
for (let at = 0; at < 720; at++) {
  const angle = (at + 0.5) / 2 / degrees;
  const corner = PI / 2 + asin(sin(tilt) * cos(angle));
  const piece = sqrt(1 + (slope * sin(angle)) ** 2);
  section += (1 / tan(corner / 2) - (PI - corner) / 2) * piece;
  arc += piece;
}
const fillet = line(
  "Joint.fillet",
  ((section / arc) * 15 ** 2 * edge * 2) / 1000,
  "mean section round the edge, added up",
);
const bands = (diameter: number, from: number, step: number, count: number) =>
  Array.from({ length: count }, (_, n) => from + n * step).reduce(
    (sum, width) => sum + PI * diameter * width + edge * width + PI * width ** 2,
    0,
  ) / 1e6;
const areaIn = line("Joint.area_in", 2 * bands(tube, 50, 18, inside), "tube band and hull band (Steiner), ply by ply");
const areaOut = line("Joint.area_out", 2 * bands(185, 38, 6, outer), "tube band and hull band (Steiner), ply by ply");
const plyArea = line("Joint.ply_area", areaIn + areaOut + ((recess * 185) / 1e6) * 2 * 4, "inside, outside, end shape");
const wet = line("Joint.resin_plies", (plyArea * 600 * ((1 - 0.38) / 0.38)) / 1000, "resin to glass at 0.38 by mass");
const core = line(
  "Joint.core_fill",
  ((edge * 60 + PI * 60 ** 2) / 1e6) * 2 * 15 * 1000,
  "60 mm ring (Steiner), 15 mm thick",
);
const filler = ((fillet + core) / 1000) * 1.1;
const resin = line("Joint.resin", wet + filler * 0.6, "plies and the resin in the filler");
const pot = line("Joint.pot", 25 * 2 ** ((25 - 19) / 10), "doubles for each 10 C colder");
const portion = line("Joint.portion", min(0.5, 0.6 * 0.02 * pot), "rate, 0.6 of the pot life, at most 0.5 kg");
line("Joint.portions", ceil(resin / portion), "whole portions");
line("Joint.hardener_portion", (portion * 28) / 128, "100 to 28 by mass");

// Fit.
line("Fit.reach_in", long / 2 + 50 + (inside - 1) * 18, "half the hole and the longest leg");
line("Fit.oil_head", (520 - 280) * (sea / 890 - 1), "two columns in balance at the axis, deep trim");

// Estimate. Low, likely and high hours of the 17 operations; one in five parts of their spread in common.
const hours = [
  [3.5, 5, 7],
  [2.5, 3.5, 9.5],
  [5, 7, 14.5],
  [2.5, 3.5, 6],
  [2, 3, 5],
  [3, 5, 9],
  [3.5, 5, 8.5],
  [3.5, 5, 8.5],
  [9.5, 13, 21.5],
  [9.5, 14.5, 24],
  [7, 11, 19],
  [3.5, 5, 7],
  [5, 7, 12],
  [12, 17, 29],
  [3.5, 5, 9.5],
  [3.5, 5, 8.5],
  [5, 7, 12],
] as const;
const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);
const spreads = hours.map(([low, , high]) => (high - low) / 6);
const mean = line("Estimate.hours_mean", total(hours.map(([l, m, h]) => (l + 4 * m + h) / 6)), "PERT, Taylor");
const spread = line(
  "Estimate.hours_spread",
  sqrt(0.8 * total(spreads.map((s) => s ** 2)) + 0.2 * total(spreads) ** 2),
  "variance of a sum, every pair correlated by 0.2",
);
const likely = line("Estimate.hours_likely", total(hours.map(([, m]) => m)), "sum");
const packs = ceil((resin * 1.15) / 5);
const rolls = ceil((plyArea * 0.6 * 1.15) / 5);
const laminate = line(
  "Estimate.cost_laminate",
  rolls * 5 * 11 + packs * 5 * 16 + filler * 1.15 * 14,
  "packs and prices",
);
const coat = (PI * 185 * 720 + edge * 108 + PI * 108 ** 2 + edge * 108 + PI * 108 ** 2) / 1e6;
const materials = line(
  "Estimate.materials",
  laminate * 1.35 + (stock / 1000) * 260 + 17 * 26 + 12 * 9 + coat * 48 + 450,
  "laminate and consumables, tube, conductors, lugs, coating, fuse and isolator",
);
const days = line("Estimate.days", mean / (2 * 7.5) + (2 * 48) / 24, "two people, 7.5 h a day, two cures of 48 h");
const fixed = 12.1 * 42 + days * 26 + 60 + materials + 1850 + 340 + 280;
const base = line("Estimate.base", likely * 62 + fixed, "likely hours, yard, materials, unit, charging, certificate");
// Normal distribution: eight in ten lie below the mean plus 0.8416212335729143 standard deviations.
const costly = mean * 62 + fixed + 0.8416212335729143 * sqrt((spread * 62) ** 2 + (0.08 * materials) ** 2);
line("Estimate.contingency", costly - base, "cost at P80 less base");
const price = line("Estimate.price_80", costly * 1.18, "18 % on cost");
line("Estimate.ceiling_ok", 1 - (price * 1.22) / 21500, "22 % tax, against 21500");
line("Compare.price_thrust", price / thrust, "price over thrust");

const live = openWorked("three-hulls");

it.each(chain)("%s of the cruiser is %d: %s", (row, worked) => {
  const value = valueAt(live, `${row}@Cruiser`);
  const difference = value.kind === "number" ? Math.abs(value.value - worked) : Number.NaN;
  expect(difference, JSON.stringify(value)).toBeLessThanOrEqual(1e-9 * Math.abs(worked));
});
