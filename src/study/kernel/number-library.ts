/** Rounding away from the plain rule of JavaScript for negative numbers, as the engine does it. */
const rounded =
  (round: (value: number) => number) =>
  (value: number, places: number): number => {
    const factor = 10 ** places;
    return value < 0 ? -round(-value * factor) / factor : round(value * factor) / factor;
  };

const stepped =
  (round: (value: number) => number) =>
  (value: number, step: number): number => {
    if (value === 0) return Number.isNaN(step) ? step : 0;
    return step === 0 || (value > 0 && step < 0) ? Number.NaN : round(value / step) * step;
  };

/** Functions of numbers that the engine calculates in a way of its own; NaN for an error. */
export const numberLibrary = {
  /** The arguments stand the other way round than in `Math.atan2`, and two zeros are an error. */
  angle: (x: number, y: number): number => (x === 0 && y === 0 ? Number.NaN : Math.atan2(y, x)),
  ceiling: stepped(Math.ceil),
  floor: stepped(Math.floor),
  power: (base: number, exponent: number): number => (Number.isNaN(base) ? base : base ** exponent),
  remainder: (value: number, by: number): number => {
    if (by === 0) return Number.NaN;
    const rest = value % by;
    return rest === 0 || rest < 0 === by < 0 ? rest : rest + by;
  },
  round: rounded(Math.round),
  roundDown: rounded(Math.floor),
  roundUp: rounded(Math.ceil),
  sign: (value: number): number => Math.sign(value),
  /** Towards zero. */
  whole: (value: number): number => Math.trunc(value),
} as const;
