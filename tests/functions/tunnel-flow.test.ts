import { describe, expect, it } from "vitest";
import { tunnelEdge } from "../../src/functions/tunnel/edge";
import { tunnelFriction } from "../../src/functions/tunnel/friction";
import { tunnelGrid } from "../../src/functions/tunnel/grid";
import { tunnelGrill } from "../../src/functions/tunnel/grill";
import { tunnelInlet } from "../../src/functions/tunnel/inlet";
import { tunnelLoss } from "../../src/functions/tunnel/loss";
import { tunnelOblique } from "../../src/functions/tunnel/oblique";
import { tunnelSuction } from "../../src/functions/tunnel/suction";
import { tunnelWall } from "../../src/functions/tunnel/wall";
import { tunnelWater } from "../../src/functions/tunnel/water";
import { bisect } from "./bisect";
import { agrees, byUnits, callByName } from "./second-calculation";

describe("flow", () => {
  it("TUNNEL.EDGE agrees with the units library", () => {
    agrees(tunnelEdge, byUnits(tunnelEdge, "diameter * share / 2"));
  });

  it("TUNNEL.INLET agrees with the five lines written out", () => {
    agrees(
      tunnelInlet,
      ({ edgeRadius = 0, diameter = 1 }) => {
        const x = edgeRadius / diameter;
        if (x <= 0.02) return 0.5 - 11 * x;
        if (x <= 0.04) return 0.32 - 2 * x;
        if (x <= 0.06) return 0.42 - 4.5 * x;
        if (x <= 0.1) return 0.24 - 1.5 * x;
        return x <= 0.15 ? 0.19 - x : 0.04;
      },
      { within: { edgeRadius: [0, 60] } },
    );
  });

  it("TUNNEL.OBLIQUE agrees with the units library", () => {
    agrees(tunnelOblique, byUnits(tunnelOblique, "0.57 + cos(angle) * (0.3 + 0.2 * cos(angle))"));
  });

  it("TUNNEL.GRID agrees with the units library for every bar", () => {
    for (const [section, factor] of [
      ["square", 2.42],
      ["rounded front", 1.83],
      ["round", 1.79],
      ["rounded both ends", 1.67],
      ["streamlined", 0.76],
    ] as const) {
      const second = byUnits(tunnelGrid, `${factor} * cbrt(bar / gap) ^ 4 * sin(angle)`);
      const given = { bar: 4, gap: 23, angle: 60 };
      expect(callByName(tunnelGrid, { ...given, section })).toBeCloseTo(second(given), 12);
    }
    agrees(tunnelGrid, byUnits(tunnelGrid, "1.79 * cbrt(bar / gap) ^ 4 * sin(angle)"), { within: { gap: [1, 500] } });
  });

  it("TUNNEL.GRILL agrees with the units library", () => {
    agrees(tunnelGrill, byUnits(tunnelGrill, "(1.5 - 0.5 * open) / open ^ 2 - 1"), { scale: () => 1 });
  });

  it("TUNNEL.FRICTION agrees with Colebrook's equation solved by halving", () => {
    agrees(
      tunnelFriction,
      ({ length = 0, diameter = 1, speed = 0, roughness = 0, viscosity = 1 }) => {
        const reynolds = (speed * diameter) / 1000 / viscosity;
        const x = bisect((y) => y + 2 * Math.log10(roughness / diameter / 3.7 + (2.51 * y) / reynolds), 1, 50);
        return length / diameter / x ** 2;
      },
      {
        within: { speed: [0.5, 30], roughness: [0, 2], viscosity: [5e-7, 2e-6] },
        where: ({ diameter = 1, speed = 0, roughness = 0, viscosity = 1 }) =>
          (speed * diameter) / 1000 / viscosity >= 4000 && roughness / diameter <= 0.05,
        relative: 1e-12,
      },
    );
  });

  it("TUNNEL.LOSS agrees with the sum", () => {
    agrees(tunnelLoss, ({ inlet = 0, friction = 0, other = 0 }) => [other, friction, inlet, 1].reduce((a, b) => a + b));
  });

  it("TUNNEL.SUCTION agrees with the units library", () => {
    agrees(tunnelSuction, byUnits(tunnelSuction, "jet ^ 2 * (1 + inlet) / 2 / (9.80665 m/s^2)"));
  });

  it("TUNNEL.WATER agrees with the units library", () => {
    agrees(tunnelWater, byUnits(tunnelWater, "density * length * pi * (diameter / 2) ^ 2"));
  });

  it("TUNNEL.WALL agrees with the rule written as two cases", () => {
    agrees(tunnelWall, ({ shell = 0 }) => (shell < 6.4 ? 8 : (shell * 5) / 4));
  });
});
