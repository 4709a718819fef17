import { describe, it } from "vitest";
import type { AnyDefinition } from "../../src/formula/definition";
import { tunnelAxisDepth } from "../../src/functions/tunnel/axis-depth";
import { tunnelBackFace } from "../../src/functions/tunnel/back-face";
import { tunnelCover } from "../../src/functions/tunnel/cover";
import { tunnelEdge } from "../../src/functions/tunnel/edge";
import { tunnelFriction } from "../../src/functions/tunnel/friction";
import { tunnelGrid } from "../../src/functions/tunnel/grid";
import { tunnelGrill } from "../../src/functions/tunnel/grill";
import { tunnelHalfLength } from "../../src/functions/tunnel/half-length";
import { tunnelHoleArea } from "../../src/functions/tunnel/hole-area";
import { tunnelHoleEdge } from "../../src/functions/tunnel/hole-edge";
import { tunnelHoleLength } from "../../src/functions/tunnel/hole-length";
import { tunnelImmersion } from "../../src/functions/tunnel/immersion";
import { tunnelInlet } from "../../src/functions/tunnel/inlet";
import { motorLean } from "../../src/functions/tunnel/lean";
import { tunnelLongest } from "../../src/functions/tunnel/longest";
import { tunnelLoss } from "../../src/functions/tunnel/loss";
import { tunnelOblique } from "../../src/functions/tunnel/oblique";
import { tunnelRecess } from "../../src/functions/tunnel/recess";
import { tunnelRecessDepth } from "../../src/functions/tunnel/recess-depth";
import { tunnelSlope } from "../../src/functions/tunnel/slope";
import { tunnelStock } from "../../src/functions/tunnel/stock";
import { tunnelSubmerged } from "../../src/functions/tunnel/submerged";
import { tunnelSuction } from "../../src/functions/tunnel/suction";
import { tunnelTrim } from "../../src/functions/tunnel/trim";
import { tunnelVentilation } from "../../src/functions/tunnel/ventilation";
import { tunnelWall } from "../../src/functions/tunnel/wall";
import { tunnelWater } from "../../src/functions/tunnel/water";
import { refuses, refusesEveryBadArgument } from "./refusals";

describe("refusals", () => {
  const angles = { entrance: 20, flare: 15 };
  const cases: readonly (readonly [AnyDefinition, Readonly<Record<string, unknown>>])[] = [
    [tunnelCover, { axisDepth: 300, diameter: 185 }],
    [tunnelImmersion, { axisDepth: 300, diameter: 185 }],
    [tunnelAxisDepth, { diameter: 185 }],
    [tunnelSubmerged, { axisDepth: 300, diameter: 185 }],
    [tunnelVentilation, { axisDepth: 300, diameter: 185 }],
    [tunnelEdge, { diameter: 185 }],
    [tunnelInlet, { edgeRadius: 9, diameter: 185 }],
    [tunnelOblique, { angle: 60 }],
    [tunnelGrid, { bar: 4, gap: 36 }],
    [tunnelGrill, { open: 0.8 }],
    [tunnelFriction, { length: 900, diameter: 185, speed: 6 }],
    [tunnelLoss, { inlet: 0.2 }],
    [tunnelSuction, { jet: 6 }],
    [tunnelSlope, angles],
    [tunnelLongest, angles],
    [tunnelHalfLength, { halfBreadth: 400, diameter: 185, ...angles, angle: 30 }],
    [tunnelStock, { halfBreadth: 400, diameter: 185, ...angles }],
    [tunnelTrim, { diameter: 185, ...angles, angle: 30 }],
    [tunnelHoleLength, { diameter: 185, ...angles }],
    [tunnelHoleEdge, { diameter: 185, ...angles }],
    [tunnelHoleArea, { diameter: 185, ...angles }],
    [tunnelBackFace, { diameter: 185, entrance: 20 }],
    [tunnelRecess, { diameter: 185, entrance: 20, added: 10 }],
    [tunnelRecessDepth, { diameter: 185, entrance: 20 }],
    [tunnelWall, { shell: 8 }],
    [tunnelWater, { diameter: 185, length: 900 }],
    [motorLean, { height: 400, radius: 90, headroom: 300 }],
  ];

  it.each(cases.map(([definition, good]) => ({ name: definition.name, definition, good })))(
    "$name names the argument that is blank, text or outside its limits",
    ({ definition, good }) => {
      refusesEveryBadArgument(definition, good);
    },
  );

  it("says what it got and what is allowed, with the unit", () => {
    refuses(tunnelCover, { axisDepth: 300, diameter: -5 }, "range", "diameter: -5 mm (allowed 50 to 1000 mm)");
  });

  it("TUNNEL.FRICTION refuses flow that may be laminar", () => {
    refuses(
      tunnelFriction,
      { length: 900, diameter: 100, speed: 0.04 },
      "range",
      "speed: 0.04 m/s gives a Reynolds number of 3364, below 4000; a faster flow or a larger diameter is needed",
    );
  });

  it("TUNNEL.FRICTION refuses a wall rougher than the equation's range", () => {
    refuses(
      tunnelFriction,
      { length: 900, diameter: 100, speed: 5, roughness: 6 },
      "range",
      "roughness: 6 mm is more than 1/20 of the diameter 100 mm",
    );
  });

  it("TUNNEL.RECESS refuses a floor that never meets the skin", () => {
    refuses(
      tunnelRecess,
      { diameter: 185, entrance: 50, added: 40 },
      "range",
      "added: 40 deg on an entrance of 50 deg makes 90 deg or more, where the recess has no end",
    );
  });

  it("TUNNEL.GRID refuses a bar that is not in the table", () => {
    refuses(tunnelGrid, { bar: 4, gap: 36, section: "oval" }, "range", /^section: "oval" \(allowed "square" or /);
  });
});
