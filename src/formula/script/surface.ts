import type { Surface } from "../steps/surface";
import type { Draft } from "./draft";

/** A reading of a hull surface; what it refuses, it throws, and the lines refuse in their own way. */
export function surfaceScript(step: Surface, draft: Draft): void {
  const optional = (name: string): string => {
    try {
      return draft.at(name);
    } catch {
      return "0";
    }
  };
  const [stations, heights, offsets, station, height, between] = [
    "stations",
    "heights",
    "offsets",
    "station",
    "height",
    "between",
  ].map((name) => draft.at(name));
  const grid = `{stations:${stations},heights:${heights},offsets:${offsets}}`;
  const bore = `{station:${station},height:${height},radius:${optional("diameter")}/2}`;
  const own = draft.add(step.symbol);
  const call = `readSurface(${JSON.stringify(step.reading)},${grid},${between},${bore},${optional("angle")})`;
  draft.line(`let ${own};try{${own}=${call};}catch{${draft.style.refuse}}`);
}
