/** The rules of the chain as plain functions, without guards: what a program written by hand would hold. */

const radian = Math.PI / 180;

export const slopeDegrees = (first: number, second: number, spacing: number): number =>
  Math.atan((first - second) / spacing) / radian;

export const along = (first: number, second: number, base: number): number =>
  (first * first - second * second + base * base) / (2 * base);

export function away(first: number, second: number, base: number): number {
  const x = along(first, second, base);
  return Math.sqrt(Math.max(0, (first - x) * (first + x)));
}

/** tan of the angle between the tube's axis and the shell, from entrance and flare in degrees. */
export const shellSlope = (entrance: number, flare: number): number =>
  Math.sqrt(Math.tan(entrance * radian) ** 2 + Math.tan(flare * radian) ** 2);

export const trim = (diameter: number, entrance: number, flare: number, angle: number): number =>
  (diameter / 2) *
  (Math.cos(angle * radian) * Math.tan(flare * radian) - Math.sin(angle * radian) * Math.tan(entrance * radian));

/** Edge of the elliptic hole, from twenty points of a quarter. */
export function holeEdge(diameter: number, slope: number): number {
  const longHalf = (diameter / 2) * Math.sqrt(1 + slope * slope);
  const m = (slope * slope) / (1 + slope * slope);
  let sum = 0;
  for (let i = 0; i < 20; i++) {
    const sine = Math.sin(((i + 0.5) * Math.PI) / 40);
    sum += Math.sqrt(1 - m * sine * sine);
  }
  return 2 * Math.PI * longHalf * (sum / 20);
}

/** Fillet round the hole's edge, from 24 points of half a turn. */
export function filletMillilitres(radius: number, edge: number, slope: number): number {
  const tilt = Math.atan(slope);
  const sine = Math.sin(tilt);
  const tangent = Math.tan(tilt);
  let [total, weights] = [0, 0];
  for (let i = 0; i < 24; i++) {
    const phi = ((i + 0.5) * Math.PI) / 24;
    const half = Math.asin(sine * Math.cos(phi)) / 2;
    const weight = Math.sqrt(1 + (tangent * Math.sin(phi)) ** 2);
    total += weight * (1 / Math.tan(Math.PI / 4 + half) - (Math.PI / 4 - half));
    weights += weight;
  }
  return ((total / weights) * radius * radius * edge) / 1000;
}

/** Friction loss of the tube in velocity heads: Colebrook by six Newton steps. */
export function friction(
  length: number,
  diameter: number,
  speed: number,
  roughness: number,
  viscosity: number,
): number {
  const reynolds = (speed * diameter) / 1000 / viscosity;
  const rough = roughness / diameter / 3.7;
  const smooth = 2.51 / reynolds;
  let x = 5;
  for (let i = 0; i < 6; i++) {
    const inner = rough + smooth * x;
    x -= (x + 2 * Math.log10(inner)) / (1 + (2 * smooth) / (Math.LN10 * inner));
  }
  return length / (x * x * diameter);
}

/** EOS-80 at atmospheric pressure. */
export function seaDensity(t: number, s: number): number {
  const fresh =
    999.842594 + t * (0.06793952 + t * (-0.00909529 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
  const salt = 0.824493 + t * (-0.0040899 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
  const root = -0.00572466 + t * (1.0227e-4 - t * 1.6546e-6);
  return fresh + s * salt + s * Math.sqrt(s) * root + s * s * 4.8314e-4;
}

/** Temperature of a conductor after some seconds, from its rated current. */
export function warm(
  area: number,
  current: number,
  seconds: number,
  ambient: number,
  start: number,
  carry: number,
  rated: number,
  base: number,
): number {
  const resistance = 1 / 58 / area;
  const giving = (carry * carry * resistance * (1 + 0.00393 * (rated - 20))) / (rated - base);
  const heat = 3.45 * area;
  const b = giving - current * current * resistance * 0.00393;
  const u = (b * seconds) / heat;
  const source = current * current * resistance * (1 + 0.00393 * (ambient - 20));
  const share = Math.abs(u) < 0.01 ? 1 - (u / 2) * (1 - (u / 3) * (1 - (u / 4) * (1 - u / 5))) : (1 - Math.exp(-u)) / u;
  return ambient + (start - ambient) * Math.exp(-u) + ((source * seconds) / heat) * share;
}

/** Area of plies in legs of rising length, on tube and shell, in m2. */
export function plyArea(diameter: number, edge: number, first: number, step: number, count: number): number {
  let sum = 0;
  for (let i = 0; i < count; i++) {
    const width = first + i * step;
    sum += Math.PI * diameter * width + edge * width + Math.PI * width * width;
  }
  return sum / 1e6;
}

export const band = (edge: number, width: number): number => (edge * width + Math.PI * width * width) / 1e6;

export const whole = (count: number): number => Math.ceil(count - 1e-9);

/** Standard normal value for the shares about the middle (Wichura's polynomials). */
export function normalMiddle(share: number): number {
  const q = share - 0.5;
  const r = 0.180625 - q * q;
  const above =
    ((((((2509.0809287301227 * r + 33430.57558358813) * r + 67265.7709270087) * r + 45921.95393154987) * r +
      13731.69376550946) *
      r +
      1971.5909503065513) *
      r +
      133.14166789178438) *
      r +
    3.3871328727963665;
  const below =
    ((((((5226.495278852854 * r + 28729.085735721943) * r + 39307.89580009271) * r + 21213.794301586597) * r +
      5394.196021424751) *
      r +
      687.1870074920579) *
      r +
      42.31333070160091) *
      r +
    1;
  return (q * above) / below;
}
