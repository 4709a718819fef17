import type { HullSurface, Spot } from "./hull-surface";

/** Where a tunnel meets the surface: its axis and its radius, mm. */
export interface Bore {
  readonly station: number;
  readonly height: number;
  readonly radius: number;
}

const points = 720;
const degree = Math.PI / 180;

/** The skin on the tube at an angle from the tube's top; 90 degrees is forward. */
const onTube = (surface: HullSurface, { station, height, radius }: Bore, angle: number): Spot =>
  surface(station + radius * Math.sin(angle * degree), height + radius * Math.cos(angle * degree));

const ring = <T>(read: (angle: number) => T): T[] => Array.from({ length: points }, (_, i) => read((i * 360) / points));

const meanOf = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0) / values.length;

/** Half-length of the tube at an angle, mm. */
export const halfLength = (surface: HullSurface, bore: Bore, angle: number): number =>
  onTube(surface, bore, angle).breadth;

/** Mean half-length round the tube, mm. Even steps round a closed smooth curve are the best there are. */
export const meanHalfLength = (surface: HullSurface, bore: Bore): number =>
  meanOf(ring((angle) => halfLength(surface, bore, angle)));

/** The greatest value round the tube: the best of the points, then between its neighbours by thirds. */
function greatest(read: (angle: number) => number): number {
  const step = 360 / points;
  const list = ring(read);
  const best = list.indexOf(Math.max(...list)) * step;
  let [low, high] = [best - step, best + step];
  for (let i = 0; i < 60; i++) {
    const third = (high - low) / 3;
    if (read(low + third) < read(high - third)) low += third;
    else high -= third;
  }
  return Math.max(...list, read((low + high) / 2));
}

/** Greatest half-length round the tube, mm. */
export const greatestHalfLength = (surface: HullSurface, bore: Bore): number =>
  greatest((angle) => halfLength(surface, bore, angle));

/** Length of the line in which tube and skin meet, mm. */
export const edgeLength = (surface: HullSurface, bore: Bore): number => {
  const { radius } = bore;
  const pieces = ring((angle) => {
    const { along, up } = onTube(surface, bore, angle);
    // Change of the half-length for each radian round the tube.
    const change = radius * (along * Math.cos(angle * degree) - up * Math.sin(angle * degree));
    return Math.hypot(radius, change);
  });
  return 2 * Math.PI * meanOf(pieces);
};

/** Greatest strip of aft wall that is seen from dead ahead over the fore lip, mm; below 0 the aft lip lies inside. */
export const backFace = (surface: HullSurface, bore: Bore): number =>
  greatest((angle) => halfLength(surface, bore, -angle) - halfLength(surface, bore, angle));

/** Greatest distance, along the tunnel, between the skin and the flat side through the axis, on the tube, mm. */
export const bend = (surface: HullSurface, bore: Bore): number => {
  const { breadth, along, up } = surface(bore.station, bore.height);
  return greatest((angle) => {
    const flat = breadth + bore.radius * (along * Math.sin(angle * degree) + up * Math.cos(angle * degree));
    return Math.abs(halfLength(surface, bore, angle) - flat);
  });
};

// Places and weights of Gauss and Legendre with six points on -1 .. 1; DLMF 3.5.
const gauss = [
  [0.2386191860831969, 0.467913934572691],
  [0.6612093864662645, 0.3607615730481386],
  [0.932469514203152, 0.1713244923791704],
].flatMap(([place = 0, weight = 0]) => [[-place, weight] as const, [place, weight] as const]);

/** Integral over the tunnel's cross-section: rings by Gauss and Legendre in four parts, even steps round each. */
function overSection(surface: HullSurface, bore: Bore, term: (spot: Spot) => number): number {
  const parts = 4;
  const around = 120;
  let total = 0;
  for (let part = 0; part < parts; part++) {
    for (const [place, weight] of gauss) {
      const radius = (bore.radius * (part + (1 + place) / 2)) / parts;
      let sum = 0;
      for (let i = 0; i < around; i++) sum += term(onTube(surface, { ...bore, radius }, (i * 360) / around));
      total += ((weight * bore.radius) / (2 * parts)) * radius * ((2 * Math.PI) / around) * sum;
    }
  }
  return total;
}

/** Area of skin inside the hole, mm2. */
export const holeArea = (surface: HullSurface, bore: Bore): number =>
  overSection(surface, bore, ({ along, up }) => Math.sqrt(1 + along * along + up * up));

/** Space inside the tunnel from skin to skin, both sides, mm3. */
export const tunnelVolume = (surface: HullSurface, bore: Bore): number =>
  2 * overSection(surface, bore, ({ breadth }) => breadth);
