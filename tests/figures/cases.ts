import { type AnswerOverInputInput, answerOverInput } from "../../src/figures/answer-over-input";
import { type ConductorWarmthInput, conductorWarmth } from "../../src/figures/conductor-warmth";
import { type CostSpreadInput, costSpread } from "../../src/figures/cost-spread";
import { cutLines } from "../../src/figures/cut-lines";
import { developedTube } from "../../src/figures/developed-tube";
import type { Figure } from "../../src/figures/figure";
import { fuseWindow } from "../../src/figures/fuse-window";
import { type GroundOutlineInput, groundOutline } from "../../src/figures/ground-outline";
import { holeSquare } from "../../src/figures/hole-square";
import { type HullSectionInput, hullSection } from "../../src/figures/hull-section";
import { type JointPliesInput, jointPlies } from "../../src/figures/joint-plies";
import { type LeverArmsInput, leverArms } from "../../src/figures/lever-arms";
import { lossBySize } from "../../src/figures/loss-by-size";
import { type MotorSpaceInput, motorSpace } from "../../src/figures/motor-space";
import { optionsCompared } from "../../src/figures/options-compared";
import { pliesLaid } from "../../src/figures/plies-laid";
import { type PotLifeInput, potLife } from "../../src/figures/pot-life";
import { pushAgainstWind } from "../../src/figures/push-against-wind";
import { roundedEdge } from "../../src/figures/rounded-edge";
import { type VoltageBudgetInput, voltageBudget } from "../../src/figures/voltage-budget";
import { waterOverTube } from "../../src/figures/water-over-tube";
import { type WaterlineViewInput, waterlineView } from "../../src/figures/waterline-view";
import { yachtHull } from "../published/yacht-hull";

// Invented numbers of one boat; the extreme cases change some of them.

export const section: HullSectionInput = {
  diameter: 185,
  wall: 8,
  halfBreadth: 360,
  flare: 25.1,
  skin: 24,
  axisHeight: 280,
  axisLight: 160,
  axisDeep: 240,
  immersionLeast: 0.5,
  motorHeight: 450,
  motorRadius: 80,
  lean: 0,
  headroom: 540,
};

const waterline: WaterlineViewInput = {
  diameter: 185,
  wall: 8,
  halfBreadth: 360,
  entrance: 24,
  measured: 400,
  behindStem: 900,
  recessDepth: 52,
  recessLength: 286,
  deflector: 36,
};

const space: MotorSpaceInput = {
  diameter: 185,
  wall: 8,
  motorHeight: 450,
  motorRadius: 80,
  headroom: 405,
  sideRoom: 420,
  leanMost: 45,
};

const volts: AnswerOverInputInput = {
  answer: { words: "volts lost, V", write: (value) => `${value} V` },
  input: { words: "current, A", write: (value) => `${value} A` },
  isStepped: false,
  points: [100, 150, 200, 250, 300].map((x) => ({ x, y: x / 250 })),
  now: { x: 250, y: 1 },
};

/** Cross-sections of gauges, in whole mm². */
const gauges: AnswerOverInputInput = {
  answer: { words: "cross-section, mm²", write: (value) => `${value} mm²` },
  input: { words: "gauge of the reel", write: String },
  isStepped: false,
  points: [
    { x: "1/0", y: 53 },
    { x: "2/0", y: 67 },
    { x: "3/0", y: undefined },
    { x: "4/0", y: 107 },
  ],
  now: { x: "1/0", y: 53 },
};

export const end = { outside: 201, entrance: 24, flare: 25.1 };

const joint: JointPliesInput = {
  shell: 9,
  wall: 8,
  ply: 0.73,
  pliesIn: 7,
  pliesOut: 13,
  legFirst: 50,
  legStep: 18,
  outFirst: 36,
  outStep: 6,
  targetIn: 4.5,
  targetOut: 9,
  bevelDepth: 9,
  bevelRatio: 12,
  filletRadius: 15,
};

const ground: GroundOutlineInput = { ...end, bevel: 108, leg: 158, frame: 360, bulkhead: 520 };

const budget: VoltageBudgetInput = {
  rest: 12.6,
  losses: [
    { what: "battery", volts: 0.93 },
    { what: "conductors", volts: 0.98 },
    { what: "joints", volts: 0.1 },
    { what: "isolator", volts: 0.03 },
    { what: "fuse", volts: 0.07 },
    { what: "relay", volts: 0.07 },
  ],
  least: 10.5,
  current: 290,
};

export const warmth: ConductorWarmthInput = {
  area: 95,
  current: 310,
  seconds: 180,
  ambient: 30,
  carry: 395,
  rated: 105,
  base: 30,
  most: 75,
};

const spread: CostSpreadInput = {
  base: 14250,
  mean: 15120,
  spread: 780,
  shareMiddle: 0.5,
  shareContingency: 0.8,
};

const levers: LeverArmsInput = { push: 1500, centre: 5.4, pivot: 0.8, thruster: 9.6, needed: 784, offered: 850 };

const pot: PotLifeInput = {
  stated: 20,
  today: 13.2,
  temperature: 31,
  share: 0.6,
  rate: 0.012,
  portion: 0.09504,
  portions: 32,
};

const wind = { wind: 7.9, thrustNeeded: 410, spare: 1.1, thrust: 520 };

const options = [
  { option: "Sloop", price: 14200, margin: 0.12, short: 0, open: 0 },
  { option: "Cruiser", price: 17900, margin: -0.08, short: 2, open: 0 },
  { option: "Pilot", price: 25100, margin: 0.31, short: 0, open: 1 },
];

/** The hull of tests/published/yacht-hull.ts around the tunnel 1.8 m behind its stem. */
const places = [-200, -100, 0, 100, 200];
export const curved = {
  outside: 185,
  station: -1800,
  height: -300,
  stations: places.map((place) => place - 1800),
  heights: places.map((place) => place - 300),
  offsets: places.flatMap((z) => places.map((x) => yachtHull(1800 - x, z - 300))),
};

/** Every drawing of the tests by the name of its file. */
export const cases: Readonly<Record<string, () => Figure>> = {
  "hull-section": () => hullSection(section),
  "hull-section-leaning": () => hullSection({ ...section, headroom: 405, lean: 37.5, axisLight: 150 }),
  "hull-section-flare-0": () => hullSection({ ...section, flare: 0, skin: 8 }),
  "hull-section-lean-90": () => hullSection({ ...section, lean: 90, headroom: 90 }),
  "hull-section-shallow": () => hullSection({ ...section, axisLight: 60, axisDeep: 100, flare: -12 }),
  "hull-section-flare-60": () =>
    hullSection({ ...section, flare: 60, halfBreadth: 480, axisHeight: 420, diameter: 250 }),
  "hull-section-no-depth": () => hullSection({ ...section, axisLight: Number.NaN }),
  "waterline-view": () => waterlineView(waterline),
  "waterline-view-entrance-0": () =>
    waterlineView({ ...waterline, entrance: 0, recessDepth: 0, recessLength: 0, deflector: 0 }),
  "waterline-view-not-hidden": () => waterlineView({ ...waterline, recessDepth: 0, recessLength: 0 }),
  "waterline-view-blunt": () => waterlineView({ ...waterline, entrance: 65, deflector: 150, behindStem: 260 }),
  "motor-space": () => motorSpace(space),
  "motor-space-upright": () => motorSpace({ ...space, headroom: 540 }),
  "motor-space-lean-90": () => motorSpace({ ...space, headroom: 80, leanMost: 30 }),
  "motor-space-no-room": () => motorSpace({ ...space, headroom: 60 }),
  "hole-square": () => holeSquare(end),
  "hole-square-round": () => holeSquare({ ...end, entrance: 0, flare: 0 }),
  "hole-square-steep": () => holeSquare({ ...end, entrance: 20, flare: 60 }),
  "developed-tube": () => developedTube(end),
  "developed-tube-square": () => developedTube({ ...end, entrance: 0, flare: 0 }),
  "developed-tube-steep": () => developedTube({ ...end, entrance: 60, flare: 55 }),
  "cut-lines": () => cutLines(curved),
  "cut-lines-off-the-hull": () => cutLines({ ...curved, height: -395 }),
  "joint-plies": () => jointPlies(joint),
  "joint-plies-one": () => jointPlies({ ...joint, pliesIn: 1, pliesOut: 1 }),
  "joint-plies-forty": () =>
    jointPlies({ ...joint, pliesIn: 40, pliesOut: 40, legStep: 6, targetIn: 20, targetOut: 12, shell: 12 }),
  "ground-outline": () => groundOutline(ground),
  "ground-outline-in-the-way": () => groundOutline({ ...ground, frame: 240, bulkhead: 200 }),
  "voltage-budget": () => voltageBudget(budget),
  "voltage-budget-short": () =>
    voltageBudget({
      ...budget,
      losses: [
        { what: "battery", volts: 1.6 },
        { what: "conductors", volts: 1.9 },
      ],
      current: 480,
    }),
  "conductor-warmth": () => conductorWarmth(warmth),
  "conductor-warmth-too-hot": () => conductorWarmth({ ...warmth, area: 35, carry: 230 }),
  "fuse-window": () => fuseWindow({ current: 310, carry: 395, share: 1.5, fuse: 350 }),
  "fuse-window-none": () => fuseWindow({ current: 480, carry: 230, share: 1.5, fuse: 500 }),
  "fuse-window-too-large": () => fuseWindow({ current: 310, carry: 330, share: 1, fuse: 350 }),
  "push-against-wind": () => pushAgainstWind(wind),
  "push-against-wind-short": () => pushAgainstWind({ ...wind, thrust: 300 }),
  "push-against-wind-no-thrust": () => pushAgainstWind({ ...wind, thrust: 0 }),
  "options-compared": () => optionsCompared(options),
  "options-compared-one": () => optionsCompared(options.slice(0, 1)),
  "options-compared-six": () =>
    optionsCompared(
      Array.from({ length: 6 }, (_, i) => ({
        option: `Layout ${i + 1}`,
        price: 14000 + 40 * i,
        margin: 0.1 + i / 100,
        short: i % 2,
        open: 0,
      })),
    ),
  "answer-over-input": () => answerOverInput(volts),
  "answer-over-input-level": () =>
    answerOverInput({ ...volts, points: volts.points.map(({ x }) => ({ x, y: 1 })), now: { x: 100, y: 1 } }),
  "answer-over-input-steps": () =>
    answerOverInput({
      ...volts,
      isStepped: true,
      points: volts.points.map(({ x, y }) => ({ x, y: Math.ceil(y ?? 0) })),
    }),
  "answer-over-input-names": () => answerOverInput(gauges),
  "answer-over-input-no-answer": () => answerOverInput({ ...volts, now: { x: 250, y: Number.NaN } }),
  "lever-arms": () => leverArms(levers),
  "lever-arms-short": () => leverArms({ ...levers, offered: 560, pivot: 0 }),
  "water-over-tube": () => waterOverTube({ diameter: 185, light: 190, deep: 260, least: 0.5 }),
  "water-over-tube-short": () => waterOverTube({ diameter: 250, light: 150, deep: 180, least: 0.5 }),
  "water-over-tube-out": () => waterOverTube({ diameter: 185, light: 40, deep: 110, least: 0.5 }),
  "rounded-edge": () => roundedEdge({ diameter: 185, radius: 9.25, inlet: 0.195, friction: 0.08 }),
  "rounded-edge-sharp": () => roundedEdge({ diameter: 185, radius: 0, inlet: 0.5, friction: 0.08 }),
  "plies-laid": () => pliesLaid({ plies: 9, each: 1.03, wanted: 8.6 }),
  "plies-laid-one": () => pliesLaid({ plies: 1, each: 1.03, wanted: 0.9 }),
  "pot-life-warm": () => potLife(pot),
  "pot-life-capped": () => potLife({ ...pot, rate: 0.08, portion: 0.5, portions: 7 }),
  "pot-life-cold": () => potLife({ ...pot, temperature: 12, today: 49.2, portion: 0.35424, portions: 12 }),
  "loss-by-size": () => lossBySize({ current: 300, run: 12, temperature: 50, limit: 0.9, size: 95 }),
  "loss-by-size-short": () => lossBySize({ current: 420, run: 18, temperature: 70, limit: 1.1, size: 50 }),
  "voltage-budget-rated": () =>
    voltageBudget({
      rest: 12.6,
      losses: [{ what: "outside motor", volts: 3.1 }],
      least: 10.5,
      called: "rated at",
      current: 244,
    }),
  "cost-spread": () => costSpread(spread),
  "cost-spread-none": () => costSpread({ ...spread, spread: 0 }),
};
