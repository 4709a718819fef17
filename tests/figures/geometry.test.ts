import ellipe from "@stdlib/math-base-special-ellipe";
import { describe, expect, it } from "vitest";
import { conductorWarmth } from "../../src/figures/conductor-warmth";
import { cutLines } from "../../src/figures/cut-lines";
import { developedTube } from "../../src/figures/developed-tube";
import { type Figure, isDrawn } from "../../src/figures/figure";
import { holePoint, holeSquare } from "../../src/figures/hole-square";
import { hullSection } from "../../src/figures/hull-section";
import { heightUnder, plyEdge } from "../../src/figures/ply-stack";
import { pushAgainstWind } from "../../src/figures/push-against-wind";
import { trimPoints } from "../../src/figures/trim-points";
import { callFunction } from "../../src/formula/call";
import { tunnelTrim } from "../../src/functions/tunnel/trim";
import { yachtHull } from "../published/yacht-hull";
import { curved, end, section, warmth } from "./cases";

const svgOf = (figure: Figure): string => {
  if (!isDrawn(figure)) throw new Error(figure.sentence);
  return figure.svg;
};

/** Scale and origin that a drawing says of itself: drawing units for one mm, and where its zero lies. */
function measure(svg: string): (x: number, y: number) => { x: number; y: number } {
  const [, scale = "", x0 = "", y0 = ""] = /data-scale="([^"]+)" data-origin="([^ ]+) ([^"]+)"/.exec(svg) ?? [];
  return (x, y) => ({ x: (x - Number(x0)) / Number(scale), y: (Number(y0) - y) / Number(scale) });
}

/** Drawn places are rounded to hundredths of a unit. */
const half = 0.0051;
const scaleOf = (svg: string): number => Number(/data-scale="([^"]+)"/.exec(svg)?.[1]);

describe("the unrolled tube", () => {
  const svg = svgOf(developedTube(end));
  const back = measure(svg);
  const drawn = [...svg.matchAll(/<circle cx="([^"]+)" cy="([^"]+)" r="2"[^>]* data-point="(\d+)"/g)];

  it("is drawn with 24 points that lie where TUNNEL.TRIM puts them", () => {
    expect(drawn).toHaveLength(24);
    for (const [, x, y, number] of drawn) {
      const at = back(Number(x), Number(y));
      const angle = (Number(number) - 1) * 15;
      const trim = callFunction(tunnelTrim, [end.outside, end.entrance, end.flare, angle]);
      expect(Math.abs(at.y - Number(trim))).toBeLessThan(half / scaleOf(svg));
      expect(Math.abs(at.x - (Math.PI * end.outside * angle) / 360)).toBeLessThan(half / scaleOf(svg));
    }
  });

  it("is as wide as the tube's outside is round, pi times its diameter", () => {
    const [, curve = ""] = /<path d="(M[^"]+)"[^>]*stroke-width="1.5"/.exec(svg) ?? [];
    const xs = [...curve.matchAll(/[ML]([-\d.]+) /g)].map(([, x]) => Number(x));
    const width = (Math.max(...xs) - Math.min(...xs)) / scaleOf(svg);
    expect(Math.abs(width - Math.PI * end.outside)).toBeLessThan((2 * half) / scaleOf(svg));
  });

  it("closes: a tube of 24 points sums to nothing above and below its mean", () => {
    expect(trimPoints(end).reduce((sum, { trim }) => sum + trim, 0)).toBeCloseTo(0, 9);
  });

  it("names every point of the trim table in its text alternative", () => {
    const figure = developedTube(end);
    const says = isDrawn(figure) ? figure.says : "";
    for (const { number, trim } of trimPoints(end)) {
      expect(says).toContain(`${number}: ${trim.toFixed(1).replace("-", "\u2212")}`);
    }
  });
});

describe("the cut line on a curved side", () => {
  const figure = cutLines(curved);
  const svg = svgOf(figure);
  const back = measure(svg);

  it("is drawn where the hull's formula has the skin, 24 points within 0.2 mm from offsets 100 mm apart", () => {
    const skin = (angle: number) => {
      const turn = (angle * Math.PI) / 180;
      return yachtHull(1800 - 92.5 * Math.sin(turn), -300 + 92.5 * Math.cos(turn));
    };
    const mean = Array.from({ length: 720 }, (_, i) => skin(i / 2)).reduce((sum, one) => sum + one, 0) / 720;
    const drawn = [...svg.matchAll(/<circle cx="([^"]+)" cy="([^"]+)" r="2"[^>]* data-point="(\d+)"/g)];
    expect(drawn).toHaveLength(24);
    for (const [, x, y, number] of drawn) {
      const trim = skin((Number(number) - 1) * 15) - mean;
      expect(Math.abs(back(Number(x), Number(y)).y - trim)).toBeLessThan(0.2 + half / scaleOf(svg));
    }
  });

  it("says by how much the flat side errs: 32.2 mm at its bottom at least", () => {
    const [, bend = ""] = /errs by up to ([\d.]+) mm/.exec(isDrawn(figure) ? figure.says : "") ?? [];
    expect(Number(bend)).toBeGreaterThan(32.1);
    expect(Number(bend)).toBeLessThan(34);
  });
});

describe("the hole seen square", () => {
  // A plane that cuts a cylinder makes an ellipse: short axis D, long axis D sqrt(1 + G^2), perimeter 4 a E(m).
  const G = Math.hypot(Math.tan((24 * Math.PI) / 180), Math.tan((25.1 * Math.PI) / 180));
  const points = Array.from({ length: 3600 }, (_, i) => holePoint(end, i / 10));

  it("is an ellipse with the axes of the cut plane (identity)", () => {
    const sizes = points.map(({ x, y }) => Math.hypot(x, y));
    expect(Math.max(...sizes)).toBeCloseTo((end.outside / 2) * Math.sqrt(1 + G * G), 3);
    expect(Math.min(...sizes)).toBeCloseTo(end.outside / 2, 3);
  });

  it("has the perimeter 4 a E(m) (DLMF 19.9.9)", () => {
    const chords = points.map(({ x, y }, i) => {
      const next = points[(i + 1) % points.length] ?? { x, y };
      return Math.hypot(next.x - x, next.y - y);
    });
    const a = (end.outside / 2) * Math.sqrt(1 + G * G);
    expect(chords.reduce((sum, chord) => sum + chord, 0)).toBeCloseTo(4 * a * ellipe((G * G) / (1 + G * G)), 2);
  });

  it("leans aft where the side flares out and the waterline opens aft", () => {
    const longest = points.reduce((best, at) => (Math.hypot(at.x, at.y) > Math.hypot(best.x, best.y) ? at : best));
    expect(Math.sign(longest.x)).toBe(-Math.sign(longest.y));
  });

  it("is drawn to the scale that it says", () => {
    const svg = svgOf(holeSquare(end));
    const back = measure(svg);
    const [, d = ""] = /<path d="(M[^"]+Z)"[^>]*stroke-width="1.5"/.exec(svg) ?? [];
    const drawn = [...d.matchAll(/[ML]([-\d.]+) ([-\d.]+)/g)].map(([, x, y]) => back(Number(x), Number(y)));
    drawn.forEach((at, i) => {
      const wanted = holePoint(end, i * 3);
      expect(Math.hypot(at.x - wanted.x, at.y - wanted.y)).toBeLessThan((2 * half) / scaleOf(svg));
    });
    expect(drawn).toHaveLength(120);
  });
});

describe("the section", () => {
  it("puts the waterlines at their depths over the axis", () => {
    const svg = svgOf(hullSection(section));
    const back = measure(svg);
    const waters = [...svg.matchAll(/<path d="M[-\d.]+ ([-\d.]+)L[^"]+"[^>]*stroke-dasharray="10 3 2 3"/g)];
    const heights = new Set(waters.map(([, y]) => Math.round(back(0, Number(y)).y)));
    expect([...heights].sort()).toEqual([section.axisLight, section.axisDeep]);
  });
});

describe("plies", () => {
  const stack = { count: 3, each: 2, first: 50, step: 10 };

  it("lie on those below only as far as these reach", () => {
    expect(heightUnder(stack, 2, 40)).toBe(4);
    expect(heightUnder(stack, 2, 55)).toBe(2);
    expect(heightUnder(stack, 2, 65)).toBe(0);
  });

  it("end at their own reach, on the surface", () => {
    expect(plyEdge(stack, 2).at(-1)).toEqual({ x: 70, y: 0 });
    expect(plyEdge(stack, 0)).toEqual([
      { x: 0, y: 2 },
      { x: 50, y: 2 },
      { x: 50, y: 0 },
    ]);
  });
});

describe("charts", () => {
  it("says the temperature after endless time at the carrying current is the table's limit", () => {
    const figure = conductorWarmth({ ...warmth, current: warmth.carry, seconds: 50_000 });
    expect(isDrawn(figure) && figure.says).toContain("after a second one straight on 105");
  });

  it("holds wind up to the root of thrust over need: four times the thrust holds twice the wind", () => {
    const figure = pushAgainstWind({ wind: 7, thrustNeeded: 300, spare: 1, thrust: 1200 });
    expect(isDrawn(figure) && figure.says).toContain("holds up to 14.0\u00a0m/s");
  });
});
