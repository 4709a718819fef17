// The course's solutions and mistakes once more, worked from nothing but what a trainee is given: plain arithmetic,
// typed from the texts that each task names, without the named functions. Longer than 150 lines: one part a task.
import { bisect } from "../functions/bisect";

/** What a trainee is given, by name. */
export type GivenValues = Readonly<Record<string, number | string>>;

/** Answers by name, and for each answer its mistakes by title. */
export interface Second {
  readonly answers: Readonly<Record<string, number | string>>;
  readonly mistakes: Readonly<Record<string, Readonly<Record<string, number | string>>>>;
}

type Numbers = Readonly<Record<string, number>>;

const numbersOnly = (given: GivenValues): Numbers =>
  Object.fromEntries(Object.entries(given).map(([name, value]) => [name, Number(value)]));

const radians = (degrees: number) => (degrees / 180) * Math.PI;
const tan = (degrees: number) => Math.tan(radians(degrees));
const roundedUp = (value: number) => Math.ceil(value - 1e-9);

/** IEC 60228:2004, table 3, class 5, plain copper: ohm/km at 20 °C. */
const class5: Readonly<Record<number, number>> = {
  4: 4.95,
  6: 3.3,
  10: 1.91,
  16: 1.21,
  25: 0.78,
  35: 0.554,
  50: 0.386,
  70: 0.272,
  95: 0.206,
  120: 0.161,
  150: 0.129,
  185: 0.106,
  240: 0.0801,
  300: 0.0641,
  400: 0.0486,
};
const warmed = (celsius: number) => 1 + 0.00393 * (celsius - 20);

/** 33 CFR 183.425, table 5, 105 °C column. */
const table5: Readonly<Record<string, number>> = { "1": 245, "1/0": 285, "2/0": 330, "3/0": 385, "4/0": 445 };

/** NFPA 70, 240.6(A), the part that matters here. */
const ratings = [110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500, 600];
const ratingFrom = (amperes: number) => ratings.find((rating) => rating >= amperes) ?? Number.NaN;

/** Munson, Fundamentals of Fluid Mechanics, fig. 8.24: edge radius over diameter, loss. */
const inletPoints = [
  [0, 0.5],
  [0.02, 0.28],
  [0.04, 0.24],
  [0.06, 0.15],
  [0.1, 0.09],
  [0.15, 0.04],
] as const;
function inletLoss(share: number): number {
  const above = inletPoints.findIndex(([x]) => x >= share - 1e-12);
  if (above < 0) return 0.04;
  const [x1, y1] = inletPoints[above] as (typeof inletPoints)[number];
  const [x0, y0] = inletPoints[Math.max(0, above - 1)] as (typeof inletPoints)[number];
  return x1 === x0 ? y1 : y0 + ((share - x0) / (x1 - x0)) * (y1 - y0);
}

const other = (value: string, one: string, two: string) => (value === one ? two : one);

const windPush = ({ wind = 0, area = 0, coefficient = 0 }: Numbers): Second => {
  const speed = (wind * 1852) / 3600;
  const pressure = (1.225 * speed ** 2) / 2;
  return {
    answers: { pressure, push: pressure * coefficient * area },
    mistakes: {
      pressure: {
        "knots taken for metres a second": (1.225 * wind ** 2) / 2,
        "the half of the formula forgotten": 1.225 * speed ** 2,
        "speed not squared": (1.225 * speed) / 2,
      },
      push: {
        "knots taken for metres a second": ((1.225 * wind ** 2) / 2) * coefficient * area,
        "coefficient left out": pressure * area,
        "the half of the formula forgotten": 1.225 * speed ** 2 * coefficient * area,
      },
    },
  };
};

const lever = ({ push = 0, centre = 0, pivot = 0, thruster = 0, stated = 0 }: Numbers): Second => {
  const need = (push * (centre - pivot)) / (thruster - pivot);
  const verdict = stated >= need ? "holds" : "falls short";
  return {
    answers: { need, verdict },
    mistakes: {
      need: {
        "lever upside down": (push / (centre - pivot)) * (thruster - pivot),
        "distances taken from the transom instead of from the held point": (push / thruster) * centre,
        "lever left out": push,
        "the share of the stern line worked out": push - need,
      },
      verdict: {
        "thrust offered and thrust needed compared the wrong way round": other(verdict, "holds", "falls short"),
      },
    },
  };
};

const cover = ({ light = 0, deep = 0, diameter = 1 }: Numbers): Second => {
  const water = light - diameter / 2;
  const verdict = water / diameter >= 0.5 ? "fits" : "does not fit";
  return {
    answers: { cover: water, immersion: water / diameter, verdict },
    mistakes: {
      cover: {
        "cover measured from the axis": light,
        "diameter taken for the radius": light - diameter,
        "deep trim taken for the worse one": deep - diameter / 2,
        "depth of the bottom of the tube worked out": light + diameter / 2,
      },
      immersion: {
        "cover measured from the axis": light / diameter,
        "counted in radii": (2 * water) / diameter,
        "deep trim taken for the worse one": deep / diameter - 0.5,
      },
      verdict: {
        "immersion and limit compared the wrong way round": other(verdict, "fits", "does not fit"),
        "asked where the numbers decide": "stop and ask",
      },
    },
  };
};

const entrance = ({
  aft = 0,
  fore = 0,
  spacing = 1,
  half_m = 0,
  flare = 0,
  diameter = 0,
  allowance = 0,
}: Numbers): Second => {
  const slope = (aft - fore) / spacing;
  const side = half_m * 1000;
  const radius = diameter / 2;
  const steepest = Math.hypot(slope, tan(flare));
  const stock = (reach: number, over = allowance, half = side) => 2 * (half + reach + over);
  return {
    answers: { entrance: (Math.atan(slope) * 180) / Math.PI, stock: stock(radius * steepest) },
    mistakes: {
      entrance: {
        "tangent upside down": 90 - (Math.atan(slope) * 180) / Math.PI,
        "both sides together": (Math.atan(slope) * 360) / Math.PI,
        "left as a slope or in radians": slope,
      },
      stock: {
        "diameter taken for the radius": stock(diameter * steepest),
        "one side only": stock(radius * steepest) / 2,
        "flare left out": stock(radius * slope),
        "both slopes simply added": stock(radius * (slope + tan(flare))),
        "allowance at one end only": stock(radius * steepest) - allowance,
        "metres taken for millimetres": stock(radius * steepest, allowance, half_m),
      },
    },
  };
};

const edge = ({ diameter = 0, percent = 0, friction = 0 }: Numbers): Second => {
  const share = percent / 200;
  const inlet = inletLoss(share);
  const below = inletPoints.filter(([x]) => x <= share).at(-1)?.[1] ?? 0;
  return {
    answers: { edge: (percent / 100) * (diameter / 2), inlet, loss: 1 + inlet + friction },
    mistakes: {
      edge: { "percent of the radius taken of the diameter": (percent / 100) * diameter },
      inlet: {
        "percent of the radius taken of the diameter": inletLoss(percent / 100),
        "sharp edge taken": 0.5,
        "next lower line of the table taken": below,
      },
      loss: {
        "exit loss added on top": 2 + inlet + friction,
        "the jet's own energy left out": inlet + friction,
        "friction left out": 1 + inlet,
      },
    },
  };
};

const plies = ({ fabric = 0, fraction = 0, thickness = 0, area = 0 }: Numbers): Second => {
  const dry = fabric / 1000;
  // ISO 12215-5:2008, Annex C, equation C.1: w/3.072 · (2.56/ψ − 1.36).
  const ply = (psi: number) => (dry / 3.072) * (2.56 / psi - 1.36);
  const count = roundedUp(thickness / ply(fraction));
  const glass = dry * area * count;
  const resin = glass / fraction - glass;
  return {
    answers: { each: ply(fraction), plies: count, resin },
    mistakes: {
      each: { "glass fraction upside down": ply(1 - fraction), "resin left out": dry / 2.56 },
      plies: {
        "rounded down": count - 1,
        "glass fraction upside down": roundedUp(thickness / ply(1 - fraction)),
        "resin left out": roundedUp((thickness * 2.56) / dry),
      },
      resin: {
        "glass fraction upside down": glass / (1 - fraction) - glass,
        "glass taken for resin": glass,
        "one ply only": resin / count,
        "glass and resin together": glass + resin,
      },
    },
  };
};

const portions = ({ total = 0, minutes = 0, temperature = 0, rate = 0, parts = 0 }: Numbers): Second => {
  const doublings = (25 - temperature) / 10;
  const potlife = minutes * Math.exp(Math.LN2 * doublings);
  const portion = Math.min(0.5, 0.6 * potlife * rate);
  const count = roundedUp(total / portion);
  return {
    answers: {
      potlife,
      portion,
      portions: count,
      hardener: (portion / (100 + parts)) * parts,
      tomorrow: "stop and ask",
    },
    mistakes: {
      potlife: {
        "warm and cold the wrong way round": minutes / 2 ** doublings,
        "straight line instead of doubling": minutes + minutes * doublings,
        "temperature left out": minutes,
      },
      portion: {
        "whole pot life counted on": Math.min(0.5, potlife * rate),
        "pot life at 25 °C taken": Math.min(0.5, 0.6 * minutes * rate),
        "the largest pot taken": 0.5,
      },
      portions: { "rounded down": count - 1, "the largest pot taken": roundedUp(2 * total) },
      hardener: {
        "parts taken of the mix instead of the resin": (portion * parts) / 100,
        "resin and hardener changed over": (portion / (100 + parts)) * 100,
      },
      tomorrow: {
        "rule used outside its range": "go on with the rule",
        "a smaller pot taken for a remedy": "take half a portion",
      },
    },
  };
};

const drop = ({ current = 0, way = 0, area = 1, temperature = 20, r = 0, limit = 0 }: Numbers): Second => {
  const milliohm = (metres: number, celsius: number) => r * metres * warmed(celsius);
  // IEC 60028: 1/58 ohm mm2/m at 20 °C.
  const geometric = ((2 * way * 1000) / (58 * area)) * warmed(temperature);
  const lost = (milliohm(2 * way, temperature) * current) / 1000;
  const verdict = lost <= limit ? "holds" : "falls short";
  return {
    answers: { resistance: milliohm(2 * way, temperature), drop: lost, verdict },
    mistakes: {
      resistance: {
        "one-way length instead of out and back": milliohm(way, temperature),
        "temperature left out": milliohm(2 * way, 20),
        "plain copper by geometry": geometric,
      },
      drop: {
        "one-way length instead of out and back": lost / 2,
        "temperature left out": (milliohm(2 * way, 20) * current) / 1000,
        "plain copper by geometry": (geometric * current) / 1000,
      },
      verdict: { "loss and limit compared the wrong way round": other(verdict, "holds", "falls short") },
    },
  };
};

const conductorSize = (given: GivenValues): Second => {
  const { current = 0, way = 0, limit = 0 } = numbersOnly(given);
  const gauge = String(given.gauge);
  const size = (metres: number) =>
    Number(
      Object.keys(class5).find((key) => ((current * metres * (class5[Number(key)] ?? 0)) / 1000) * warmed(50) <= limit),
    );
  // ASTM B258: 4/0 has 0.46 inch, every further gauge is thinner by the 39th root of 92.
  const diameter = (0.46 * 25.4) / 92 ** ((4 - Number(gauge[0])) / 39);
  const reel = (Math.PI * diameter ** 2) / 4;
  const verdict = reel >= size(2 * way) ? "fits" : "does not fit";
  const beside: Readonly<Record<string, number>> = { "1/0": 50, "2/0": 70, "3/0": 95, "4/0": 120 };
  return {
    answers: { size: size(2 * way), reel, verdict },
    mistakes: {
      size: { "one-way length instead of out and back": size(way), "length doubled twice": size(4 * way) },
      reel: {
        "gauge taken for mm²": beside[gauge] ?? 0,
        "diameter taken for the radius": Math.PI * diameter ** 2,
        "diameter given instead of the cross-section": diameter,
      },
      verdict: {
        "cross-sections compared the wrong way round": other(verdict, "fits", "does not fit"),
        "asked where the numbers decide": "stop and ask",
      },
    },
  };
};

const fuseWindow = (given: GivenValues): Second => {
  const { current = 0, rule = 0, bank = 0, links = 0 } = numbersOnly(given);
  const amps = table5[String(given.gauge)] ?? 0;
  const carry = 0.85 * amps;
  const most = (carry * rule) / 100;
  const fuse = ratingFrom(current);
  const fault = 12600 / (bank + links);
  const verdict = fuse <= most ? "fits" : "does not fit";
  const strip = fault <= 2000 ? "fits" : "does not fit";
  return {
    answers: { carry, most, fuse, verdict, fault, strip },
    mistakes: {
      carry: { "engine space left out": amps, "divided by the engine-space factor": amps / 0.85 },
      most: {
        "the other rule taken": rule === 100 ? 1.5 * carry : carry,
        "engine space left out": (amps * rule) / 100,
      },
      fuse: {
        "rating below the motor's current": ratings.filter((rating) => rating < current).at(-1) ?? 0,
        "half as much again put on the motor's current": ratingFrom(1.5 * current),
      },
      verdict: {
        "rating and limit compared the wrong way round": other(verdict, "fits", "does not fit"),
        "asked where the numbers decide": "stop and ask",
      },
      fault: { "links left out": 12600 / bank, "milliohm taken for ohm": 12.6 / (bank + links) },
      strip: {
        "breaking capacity taken for met": other(strip, "fits", "does not fit"),
        "asked where the numbers decide": "stop and ask",
      },
    },
  };
};

const sagThrust = ({ open = 0, outside = 0, rated_current = 0, motor = 0, stated = 0 }: Numbers): Second => {
  // All losses and what turns the motor, less the volts at rest: nothing is left over at the right speed.
  const speed = bisect(
    (s) => ((outside + motor) / 1000) * rated_current * s * s + (10.5 - (motor / 1000) * rated_current) * s - open,
    0,
    2,
  );
  const current = rated_current * speed ** 2;
  const atRated = open - (rated_current * outside) / 1000;
  const volts = open - (current * outside) / 1000;
  return {
    answers: { speed, current, volts, thrust: stated * speed ** 2 },
    mistakes: {
      speed: {
        "full rated current assumed to flow": atRated / 10.5,
        "rated against the battery at rest": open / 10.5,
        "speed taken for its square": speed ** 2,
      },
      current: {
        "full rated current assumed to flow": rated_current,
        "straight with the speed": rated_current * speed,
        "more current at fewer volts": rated_current / speed,
      },
      volts: {
        "full rated current assumed to flow": atRated,
        "rated volts taken for the loaded ones": 10.5,
        "the motor's own winding taken off too": volts - (current * motor) / 1000,
      },
      thrust: {
        "rated against loaded voltage: stated thrust not reduced": stated,
        "straight with the speed": stated * speed,
      },
    },
  };
};

const wholeJob = (given: Numbers): Second => {
  const { wind = 0, area = 0, centre = 0, thruster = 1, left = 0, stated = 0, diameter = 1, light = 0 } = given;
  const { inside = 0, outside = 0 } = given;
  const flat = 0.6125 * wind ** 2 * area;
  const push = 0.9 * flat;
  const need = (push / thruster) * centre;
  const immersion = light / diameter - 0.5;
  const checks = stated * left >= need && immersion >= 0.5 ? "fits" : "does not fit";
  const apart = Math.abs(outside - inside) > 3;
  const verdict = apart ? "stop and ask" : checks;
  return {
    answers: { push, need, gives: stated * left, immersion, verdict },
    mistakes: {
      push: { "the half of the formula forgotten": 2 * push, "coefficient left out": flat },
      need: { "lever upside down": (push / centre) * thruster, "lever left out": push },
      gives: {
        "rated against loaded voltage: stated thrust not reduced": stated,
        "share taken off twice": stated * left * left,
      },
      immersion: {
        "cover measured from the axis": light / diameter,
        "diameter taken for the radius": (light - diameter) / diameter,
      },
      verdict: {
        "hold point not looked at": apart ? checks : "stop and ask",
        "a check read the wrong way": other(checks, "fits", "does not fit"),
      },
    },
  };
};

const plain = (solve: (given: Numbers) => Second) => (given: GivenValues) => solve(numbersOnly(given));

/** By the file of the task. */
export const secondSolutions: Readonly<Record<string, (given: GivenValues) => Second>> = {
  "wind-push.csv": plain(windPush),
  "lever.csv": plain(lever),
  "cover.csv": plain(cover),
  "entrance.csv": plain(entrance),
  "edge.csv": plain(edge),
  "plies.csv": plain(plies),
  "portions.csv": plain(portions),
  "drop.csv": plain(drop),
  "conductor-size.csv": conductorSize,
  "fuse-window.csv": fuseWindow,
  "sag-thrust.csv": plain(sagThrust),
  "whole-job.csv": plain(wholeJob),
};
