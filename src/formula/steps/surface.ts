import type { UnitText } from "../../units/names";
import type { Act, Scope } from "../scope";
import type { Between } from "../surface/hull-surface";
import { type Reading, readSurface } from "../surface/read-surface";

/**
 * A reading of the hull surface laid through measured offsets. It takes the arguments `stations`, `heights`,
 * `offsets`, `station`, `height` and `between` of its function by these names, and `diameter` and `angle` where the
 * function has them.
 */
export interface Surface {
  readonly kind: "surface";
  readonly symbol: string;
  readonly reading: Reading;
  readonly unit: UnitText;
  readonly why: string;
}

export function surface(step: Surface, scope: Scope): Act {
  const [stations, heights, offsets] = ["stations", "heights", "offsets"].map((name) => scope.at(name));
  const [station, height, between] = ["station", "height", "between"].map((name) => scope.at(name));
  const diameter = scope.has("diameter") ? scope.at("diameter") : undefined;
  const angle = scope.has("angle") ? scope.at("angle") : undefined;
  const own = scope.add(step.symbol);
  return (slots) => {
    const list = (place = -1) => slots[place] as readonly number[];
    const number = (place: number | undefined) => (place === undefined ? 0 : (slots[place] as number));
    slots[own] = readSurface(
      step.reading,
      { stations: list(stations), heights: list(heights), offsets: list(offsets) },
      slots[between ?? -1] as Between,
      { station: number(station), height: number(height), radius: number(diameter) / 2 },
      number(angle),
    );
  };
}
