import { isKnown, unit } from "./library";
import { isUnitText, unitNotation } from "./names";
import { binaryPrefixes, plainSymbols, prefixedSymbols, prefixes } from "./symbols";

/** What a unit text means: number × factor + offset is the same quantity in SI base units. */
export interface Unit {
  /** The unit in the library's notation. */
  readonly notation: string;
  /** Exponents of kg, m, s, A, K, cd, mol, bit and money. */
  readonly dimensions: readonly number[];
  /** Exponent of plane angle; its factor counts radians, so that leaving it out makes an angle a number. */
  readonly angle: number;
  readonly factor: number;
  /** Not 0 for a temperature on a scale with a zero of its own: only differences may be scaled. */
  readonly offset: number;
}

/** Where the library keeps plane angle among its dimensions. */
const anglePlace = 7;

const prefixed = (prefix: string, symbol: string): string | undefined => {
  const name = Object.hasOwn(prefixedSymbols, symbol) ? prefixedSymbols[symbol] : undefined;
  // A prefix belongs to the first name of a notation: k before m^2 is (km)^2, before m/s it is km/s.
  return name && isKnown(prefix + (name.match(/^[A-Za-z]+/)?.[0] ?? "")) ? prefix + name : undefined;
};

/** The library's notation of a text, own texts first, then OpenFormula's symbols, then symbols with a prefix. */
function notationOf(text: string): string | undefined {
  if (isUnitText(text)) return unitNotation[text] === "1" ? "one" : unitNotation[text];
  if (Object.hasOwn(plainSymbols, text)) return plainSymbols[text];
  if (Object.hasOwn(prefixedSymbols, text)) return prefixedSymbols[text];
  const binary = binaryPrefixes[text.slice(0, 2)];
  if (binary && (text.endsWith("bit") || text.endsWith("byte"))) return prefixed(binary, text.slice(2));
  for (const prefix of prefixes) {
    const notation = text.startsWith(prefix) ? prefixed(prefix, text.slice(prefix.length)) : undefined;
    if (notation) return notation;
  }
  return undefined;
}

function read(text: string): Unit | undefined {
  const notation = notationOf(text);
  if (!notation) return undefined;
  const size = unit(1, notation);
  const dimensions = [...size.dimensions];
  const [angle = 0] = dimensions.splice(anglePlace, 1);
  const offset = size.equalBase(unit(1, "K")) ? unit(0, notation).toNumber("K") : 0;
  return { notation, dimensions, angle, factor: size.value, offset };
}

const known = new Map<string, Unit | undefined>();

/** Reads a unit text; the answer is kept. Undefined where the text is no unit the program knows. */
export function readUnit(text: string): Unit | undefined {
  if (!known.has(text)) known.set(text, read(text));
  return known.get(text);
}
