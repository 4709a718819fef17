import ellipe from "@stdlib/math-base-special-ellipe";
import { describe, expect, it } from "vitest";
import { tunnelBackFace } from "../../src/functions/tunnel/back-face";
import { tunnelHalfLength } from "../../src/functions/tunnel/half-length";
import { tunnelHoleArea } from "../../src/functions/tunnel/hole-area";
import { tunnelHoleEdge } from "../../src/functions/tunnel/hole-edge";
import { tunnelHoleLength } from "../../src/functions/tunnel/hole-length";
import { tunnelLongest } from "../../src/functions/tunnel/longest";
import { tunnelRecess } from "../../src/functions/tunnel/recess";
import { tunnelRecessDepth } from "../../src/functions/tunnel/recess-depth";
import { tunnelSlope } from "../../src/functions/tunnel/slope";
import { tunnelStock } from "../../src/functions/tunnel/stock";
import { tunnelTrim } from "../../src/functions/tunnel/trim";
import { across, cutLine, steepness } from "./plane";
import { agrees, byUnits, callByName, type Numbers } from "./second-calculation";

const degrees = 180 / Math.PI;

describe("cut", () => {
  // tan 60 degrees bounds what cancels in a cut line.
  const scale = ({ diameter = 0, halfBreadth = 0 }: Numbers) => diameter + halfBreadth;

  it("TUNNEL.SLOPE agrees with the square to the skin", () => {
    agrees(tunnelSlope, (given) => steepness(given), { scale: () => 1e-3 });
  });

  it("TUNNEL.HALFLENGTH and TUNNEL.TRIM agree with a line cut by a plane through three points", () => {
    agrees(tunnelHalfLength, (given) => cutLine(given), { scale });
    agrees(tunnelTrim, (given) => cutLine({ ...given, halfBreadth: 0 }), { scale });
  });

  it("TUNNEL.LONGEST finds the longest line on the tube", () => {
    agrees(
      tunnelLongest,
      ({ entrance = 0, flare = 0 }) => {
        // The longest of the whole degrees; its neighbours say how far the top of the cosine is from it.
        const at = (angle: number) => cutLine({ halfBreadth: 0, diameter: 2, entrance, flare, angle });
        const best = Array.from({ length: 360 }, (_, i) => i).reduce((a, b) => (at(b) > at(a) ? b : a));
        const [before, after] = [at(best - 1), at(best + 1)];
        return (best + Math.atan((after - before) / (after + before) / Math.tan(1 / degrees)) * degrees + 360) % 360;
      },
      { within: { entrance: [0.5, 70] } },
    );
  });

  it("TUNNEL.STOCK is twice the longest half length", () => {
    agrees(
      tunnelStock,
      (given) => {
        const { entrance = 0, flare = 0, allowance = 0 } = given;
        const angle = callByName(tunnelLongest, { entrance, flare });
        return 2 * cutLine({ ...given, angle }) + 2 * allowance;
      },
      { scale },
    );
  });

  it("TUNNEL.HOLELENGTH and TUNNEL.HOLEAREA agree with the tilt of the skin", () => {
    agrees(tunnelHoleLength, (given) => (given.diameter ?? 0) / across(given));
    agrees(tunnelHoleArea, (given) => (Math.PI * ((given.diameter ?? 0) / 2000) ** 2) / across(given));
  });

  it("TUNNEL.HOLEEDGE agrees with a library's elliptic integral to 1e-12", () => {
    agrees(
      tunnelHoleEdge,
      (given) => {
        const cosine = across(given);
        return ((2 * (given.diameter ?? 0)) / cosine) * ellipe(1 - cosine ** 2);
      },
      { relative: 1e-12 },
    );
  });

  it("TUNNEL.HOLEEDGE keeps 1e-12 at the steepest angles it takes", () => {
    for (const [entrance, flare] of [
      [70, 60],
      [70, -20],
      [0, 60],
    ] as const) {
      const cosine = across({ entrance, flare });
      const perimeter = (2000 / cosine) * ellipe(1 - cosine ** 2);
      expect(Math.abs(callByName(tunnelHoleEdge, { diameter: 1000, entrance, flare }) / perimeter - 1)).toBeLessThan(
        1e-12,
      );
    }
  });

  it("TUNNEL.BACKFACE is the difference of the aft and the forward line", () => {
    agrees(tunnelBackFace, byUnits(tunnelBackFace, "diameter * sin(entrance) / cos(entrance)"), { scale: () => 1e-6 });
    const given = { halfBreadth: 500, diameter: 185, entrance: 23, flare: 12 };
    const seen = cutLine({ ...given, angle: 270 }) - cutLine({ ...given, angle: 90 });
    expect(callByName(tunnelBackFace, { diameter: 185, entrance: 23 })).toBeCloseTo(seen, 9);
  });

  it("TUNNEL.RECESS ends where its floor meets the skin", () => {
    agrees(
      tunnelRecess,
      ({ diameter = 0, entrance = 0, added = 0 }) => {
        // Law of sines in the triangle of strip, floor and skin, seen from above.
        const [e, d] = [entrance / degrees, added / degrees];
        return (diameter * Math.tan(e) * Math.cos(e + d) * Math.cos(e)) / Math.sin(d);
      },
      { within: { entrance: [0.1, 44], added: [1, 45] } },
    );
  });

  it("TUNNEL.RECESSDEPTH agrees with the units library", () => {
    agrees(tunnelRecessDepth, byUnits(tunnelRecessDepth, "diameter * cos(90 deg - entrance)"), {
      scale: ({ diameter = 0 }) => diameter,
    });
  });
});
