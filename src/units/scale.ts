import { say } from "../words/say";
import { type UnitText, unitNotation } from "./names";
import { readUnit } from "./unit";

/**
 * A unit as arithmetic sees it: number × factor is the quantity in SI base units.
 *
 * Plane angle counts as a plain number of radians, so that `deg` is a plain number with the factor π/180.
 */
export interface Scale {
  /** Exponents of kg, m, s, A, K, cd, mol, bit, money, and last of a unit that is left open. */
  readonly powers: readonly number[];
  readonly factor: number;
  /** Not 0 for a temperature counted from a zero of its own; such numbers may only be subtracted or compared. */
  readonly zero: number;
}

const kinds = 10;
const openPlace = kinds - 1;
const close = 1e-9;

const near = (a: number, b: number): boolean => Math.abs(a - b) <= close * Math.max(1, Math.abs(a), Math.abs(b));
const nearFactor = (a: number, b: number): boolean => Math.abs(a - b) <= close * Math.max(Math.abs(a), Math.abs(b));

export const plain: Scale = { powers: Array.from({ length: kinds }, () => 0), factor: 1, zero: 0 };

/** A unit that is the same, whatever it is, wherever it is left open. */
export const open: Scale = { ...plain, powers: plain.powers.with(openPlace, 1) };

/** The scale of a unit text; undefined where the text is no unit that the program knows. */
export function scaleOf(unit: string): Scale | undefined {
  const read = readUnit(unit);
  return read && { powers: [...read.dimensions, 0], factor: read.factor, zero: read.offset };
}

export const times = (a: Scale, b: Scale): Scale => ({
  powers: a.powers.map((power, i) => power + (b.powers[i] ?? 0)),
  factor: a.factor * b.factor,
  zero: 0,
});

export const raised = (a: Scale, exponent: number): Scale => ({
  powers: a.powers.map((power) => power * exponent),
  factor: a.factor ** exponent,
  zero: 0,
});

export const over = (a: Scale, b: Scale): Scale => times(a, raised(b, -1));

/** The same kind of quantity in a unit so many times larger. */
export const larger = (a: Scale, by: number): Scale => ({ ...a, factor: a.factor * by });

/** Length and length, whatever their units. */
export const sameQuantity = (a: Scale, b: Scale): boolean =>
  a.powers.every((power, i) => near(power, b.powers[i] ?? 0));

export const isBare = (a: Scale): boolean => a.powers.every((power) => near(power, 0));

const timePlace = 2;

/** A time and nothing else. */
export const isTime = (a: Scale): boolean => a.powers.every((power, i) => near(power, i === timePlace ? 1 : 0));

export const isPlain = (a: Scale): boolean => isBare(a) && nearFactor(a.factor, 1);

/** Same quantity, same size of unit, same zero: numbers that may stand side by side. */
export const sameScale = (a: Scale, b: Scale): boolean =>
  sameQuantity(a, b) && nearFactor(a.factor, b.factor) && near(a.zero, b.zero);

const baseNames = ["kg", "m", "s", "A", "K", "cd", "mol", "bit", "money", "(any unit)"];

/** Units with a name of their own that stand for no other quantity's unit first. */
const spoken: readonly UnitText[] = (Object.keys(unitNotation) as UnitText[]).filter(
  (name) => name !== "margin" && name !== "diameters" && name !== "rad",
);

const names = new Map<string, string>();

function nameAnew(scale: Scale): string {
  const known = spoken.find((name) => {
    const other = scaleOf(name);
    return other !== undefined && sameScale(scale, other);
  });
  if (known) return known;
  const base = spoken.find((name) => {
    const other = scaleOf(name);
    return other !== undefined && other.factor === 1 && other.zero === 0 && sameQuantity(scale, other);
  });
  if (base && base !== "1") return `${Number(scale.factor.toPrecision(4))} ${base}`;
  const parts = scale.powers.flatMap((power, i) =>
    near(power, 0) ? [] : [near(power, 1) ? (baseNames[i] ?? "") : `${baseNames[i]}^${Number(power.toPrecision(4))}`],
  );
  const size = nearFactor(scale.factor, 1) ? "" : `${Number(scale.factor.toPrecision(4))} `;
  return size + (parts.length > 0 ? parts.join(" ") : say`(plain number)`);
}

/** A unit text for a scale: one the program knows, or base units with their powers and the factor in front. */
export function scaleName(scale: Scale): string {
  const key = `${scale.powers.map((power) => Number(power.toPrecision(6)))}|${scale.factor.toPrecision(9)}|${scale.zero}`;
  const known = names.get(key);
  if (known !== undefined) return known;
  const name = nameAnew(scale);
  names.set(key, name);
  return name;
}
