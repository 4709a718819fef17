import { describe, expect, it } from "vitest";
import { tunnelAxisDepth } from "../../src/functions/tunnel/axis-depth";
import { tunnelCover } from "../../src/functions/tunnel/cover";
import { tunnelImmersion } from "../../src/functions/tunnel/immersion";
import { motorLean } from "../../src/functions/tunnel/lean";
import { tunnelSubmerged } from "../../src/functions/tunnel/submerged";
import { tunnelVentilation } from "../../src/functions/tunnel/ventilation";
import { bisect } from "./bisect";
import { refuses } from "./refusals";
import { agrees, byUnits, callByName, type Numbers } from "./second-calculation";

const degrees = 180 / Math.PI;

describe("place", () => {
  const scale = ({ axisDepth = 0, diameter = 0 }: Numbers) => Math.abs(axisDepth) + diameter;

  it("TUNNEL.COVER agrees with the units library", () => {
    agrees(tunnelCover, byUnits(tunnelCover, "axisDepth - diameter / 2"), { scale });
  });

  it("TUNNEL.IMMERSION agrees with the units library", () => {
    agrees(tunnelImmersion, byUnits(tunnelImmersion, "axisDepth / diameter - 0.5"), {
      scale: (given) => scale(given) / (given.diameter ?? 1),
    });
  });

  it("TUNNEL.AXISDEPTH gives the immersion it was asked for", () => {
    agrees(tunnelAxisDepth, byUnits(tunnelAxisDepth, "diameter * cover + diameter / 2"));
    const axisDepth = callByName(tunnelAxisDepth, { diameter: 215, cover: 0.8 });
    expect(callByName(tunnelImmersion, { axisDepth, diameter: 215 })).toBeCloseTo(0.8, 12);
  });

  it("TUNNEL.SUBMERGED agrees with the circular segment by its central angle", () => {
    agrees(
      tunnelSubmerged,
      ({ axisDepth = 0, diameter = 1 }) => {
        const x = (2 * axisDepth) / diameter;
        if (x >= 1) return 1;
        if (x <= -1) return 0;
        const angle = 2 * Math.acos(-x);
        return (angle - Math.sin(angle)) / (2 * Math.PI);
      },
      { within: { axisDepth: [-600, 600] }, scale: () => 1 },
    );
  });

  it("TUNNEL.VENTILATION agrees with the units library and loses nothing from 1.3 radii down", () => {
    const curve = byUnits(tunnelVentilation, "1 - 0.675 * (1 - 0.769 * axisDepth / (diameter / 2)) ^ 1.258");
    agrees(tunnelVentilation, (given) => ((given.axisDepth ?? 0) >= 0.65 * (given.diameter ?? 0) ? 1 : curve(given)), {
      within: { axisDepth: [0, 700] },
    });
  });

  it("TUNNEL.VENTILATION says that it is from memory", () => {
    expect(tunnelVentilation.sources.map(({ evidence }) => evidence)).toEqual(["memory"]);
    expect(tunnelVentilation.valid).toMatch(/from memory and not confirmed/);
  });
});

describe("MOTOR.LEAN", () => {
  it("stands the motor's corner at the headroom, and no smaller lean does", () => {
    const rise = (height: number, radius: number, lean: number) =>
      height * Math.cos(lean / degrees) + radius * Math.sin(lean / degrees);
    agrees(
      motorLean,
      ({ height = 0, radius = 0, headroom = 0 }) => {
        if (height <= headroom) return 0;
        const top = Math.atan2(radius, height) * degrees;
        return bisect((lean) => headroom - rise(height, radius, lean), top, 90);
      },
      {
        within: { height: [100, 1000], radius: [0, 300], headroom: [10, 1200] },
        where: ({ height = 0, radius = 0, headroom = 0 }) => height <= headroom || radius <= headroom,
        relative: 1e-8,
      },
    );
  });

  it("refuses a motor that does not fit even lying flat", () => {
    refuses(
      motorLean,
      { height: 400, radius: 120, headroom: 100 },
      "range",
      "headroom: 100 mm is less than the motor's radius 120 mm; it does not fit even lying flat",
    );
  });
});
