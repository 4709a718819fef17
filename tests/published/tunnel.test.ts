import { describe, expect, it } from "vitest";
import { tunnelBackFace } from "../../src/functions/tunnel/back-face";
import { tunnelHalfLength } from "../../src/functions/tunnel/half-length";
import { tunnelHoleArea } from "../../src/functions/tunnel/hole-area";
import { tunnelHoleEdge } from "../../src/functions/tunnel/hole-edge";
import { tunnelHoleLength } from "../../src/functions/tunnel/hole-length";
import { tunnelImmersion } from "../../src/functions/tunnel/immersion";
import { tunnelLongest } from "../../src/functions/tunnel/longest";
import { tunnelRecess } from "../../src/functions/tunnel/recess";
import { tunnelRecessDepth } from "../../src/functions/tunnel/recess-depth";
import { tunnelSlope } from "../../src/functions/tunnel/slope";
import { tunnelStock } from "../../src/functions/tunnel/stock";
import { tunnelSubmerged } from "../../src/functions/tunnel/submerged";
import { tunnelTrim } from "../../src/functions/tunnel/trim";
import { tunnelVentilation } from "../../src/functions/tunnel/ventilation";
import { tunnelWall } from "../../src/functions/tunnel/wall";
import { tunnelWater } from "../../src/functions/tunnel/water";
import { callByName } from "../functions/second-calculation";
import { cell, rowsOf } from "./values";

// toBeCloseTo(value, n) allows half a unit of the n-th decimal: n is what the source prints.

const degreesOf = (tangent: number) => (Math.atan(tangent) * 180) / Math.PI;

describe("the hole and the cut lines", () => {
  it.each(rowsOf("hole-geometry.csv"))(
    "entrance $entrance, flare $flare, radius $radius: a cylinder cut by a plane (own arithmetic, 4 decimals)",
    (row) => {
      const diameter = 2 * cell(row, "radius");
      const angles = { entrance: cell(row, "entrance"), flare: cell(row, "flare") };
      const halfBreadth = cell(row, "half_breadth");
      const place = { top: 0, fore: 90, bottom: 180, aft: 270 };
      for (const [name, angle] of Object.entries(place)) {
        const length = callByName(tunnelHalfLength, { halfBreadth, diameter, ...angles, angle });
        expect(length, name).toBeCloseTo(cell(row, name), 4);
      }
      expect(callByName(tunnelSlope, angles)).toBeCloseTo(cell(row, "slope"), 4);
      expect(callByName(tunnelLongest, angles)).toBeCloseTo(cell(row, "longest_at"), 4);
      expect(callByName(tunnelHoleLength, { diameter, ...angles }) / 2).toBeCloseTo(cell(row, "half_axis"), 4);
      expect(callByName(tunnelHoleArea, { diameter, ...angles }) * 1e6).toBeCloseTo(cell(row, "area"), 4);
      expect(callByName(tunnelHoleEdge, { diameter, ...angles })).toBeCloseTo(cell(row, "edge"), 4);
      expect(callByName(tunnelStock, { halfBreadth, diameter, ...angles })).toBeCloseTo(cell(row, "stock"), 4);
      const water = callByName(tunnelWater, { diameter, length: 2 * halfBreadth, density: 1000 });
      expect(water * 1e6).toBeCloseTo(cell(row, "volume"), 4);
    },
  );

  it("TUNNEL.HALFLENGTH and TUNNEL.TRIM follow a 24-point cut line (own arithmetic, 3 decimals)", () => {
    const rows = rowsOf("trim-curve.csv");
    expect(rows).toHaveLength(24);
    for (const row of rows) {
      const given = { diameter: 185, entrance: 20, flare: 15, angle: cell(row, "angle") };
      expect(callByName(tunnelHalfLength, { ...given, halfBreadth: 400 })).toBeCloseTo(cell(row, "half_length"), 3);
      expect(callByName(tunnelTrim, given)).toBeCloseTo(cell(row, "half_length") - 400, 3);
    }
  });

  it("TUNNEL.HALFLENGTH reads the flat side of a Wigley hull (Wigley 1934) and of a yacht hull at the tunnel", () => {
    for (const row of rowsOf("flat-side.csv")) {
      const given = {
        diameter: 1000 * cell(row, "diameter"),
        halfBreadth: 1000 * cell(row, "half_breadth"),
        entrance: cell(row, "entrance"),
        flare: cell(row, "flare"),
      };
      // The angles are printed to 4 or 3 decimals: half a unit of the last one moves the top by up to 2.4 um.
      for (const [name, angle] of Object.entries({ top: 0, fore: 90, bottom: 180, aft: 270 })) {
        const length = callByName(tunnelHalfLength, { ...given, angle });
        expect(Math.abs(length - 1000 * cell(row, name)), name).toBeLessThan(3e-3);
      }
    }
  });

  it.each(rowsOf("yacht-hull-tunnel.csv"))(
    "TUNNEL.IMMERSION of a tunnel of $diameter m, $depth m deep in a yacht hull (own arithmetic, 3 decimals)",
    (row) => {
      const diameter = 1000 * cell(row, "diameter");
      const cover = callByName(tunnelImmersion, { axisDepth: 1000 * cell(row, "depth"), diameter });
      expect(cover).toBeCloseTo(cell(row, "cover"), 3);
      expect((2000 * cell(row, "half_breadth")) / diameter).toBeCloseTo(cell(row, "length_over_diameter"), 3);
    },
  );

  // The other three tunnels of that hull lie where the flare is past the 60 degrees that the functions accept.
  it("TUNNEL.SLOPE and TUNNEL.HALFLENGTH where that hull flares by 58.3 degrees (own arithmetic, 3 decimals)", () => {
    const [row] = rowsOf("yacht-hull-tunnel.csv").filter((one) => cell(one, "flare") <= 60);
    if (!row) throw new Error("no such row");
    const angles = { entrance: cell(row, "entrance"), flare: cell(row, "flare") };
    // The angles are printed to 0.001 degrees: half of that moves the tilt by no more than it, the top by 2.4 um.
    expect(Math.abs(degreesOf(callByName(tunnelSlope, angles)) - cell(row, "tilt"))).toBeLessThan(1e-3);
    const given = { halfBreadth: 1000 * cell(row, "half_breadth"), diameter: 1000 * cell(row, "diameter"), ...angles };
    for (const [name, angle] of Object.entries({ flat_top: 0, flat_fore: 90, flat_bottom: 180, flat_aft: 270 })) {
      const length = callByName(tunnelHalfLength, { ...given, angle });
      expect(Math.abs(length - 1000 * cell(row, name)), name).toBeLessThan(3e-3);
    }
  });

  it("TUNNEL.SLOPE at entrance 20, flare 25 degrees is a tilt of 30.6 degrees (geometry, 2 decimals)", () => {
    expect(Math.abs(degreesOf(callByName(tunnelSlope, { entrance: 20, flare: 25 })) - 30.6)).toBeLessThan(0.05);
  });

  it.each(rowsOf("elliptic-integral.csv"))(
    "TUNNEL.HOLEEDGE gives E($m) of Abramowitz and Stegun table 17.1 (to the 1e-12 that the function keeps)",
    (row) => {
      const m = cell(row, "m");
      // A skin whose hole has that eccentricity, its slope shared between entrance and flare.
      const slope2 = m / (1 - m);
      const angles = { entrance: degreesOf(Math.sqrt(0.75 * slope2)), flare: degreesOf(Math.sqrt(0.25 * slope2)) };
      const longHalf = 250 / Math.sqrt(1 - m);
      expect(callByName(tunnelHoleEdge, { diameter: 500, ...angles }) / 4 / longHalf).toBeCloseTo(cell(row, "E"), 12);
    },
  );

  it.each([
    { long: 1, short: 1, perimeter: 6.28318530718 },
    { long: 2, short: 1, perimeter: 9.688448220548 },
    { long: 5, short: 3, perimeter: 25.5269988634 },
    { long: 101.75, short: 92.5, perimeter: 610.6003712077 },
  ])("TUNNEL.HOLEEDGE gives the ellipse $long by $short (4 a E(m) in extended precision)", (ellipse) => {
    const { long, short, perimeter } = ellipse;
    const entrance = degreesOf(Math.sqrt((long / short) ** 2 - 1));
    const edge = callByName(tunnelHoleEdge, { diameter: 200, entrance, flare: 0 });
    expect((edge * short) / 100).toBeCloseTo(perimeter, 10);
  });

  it("TUNNEL.HOLEEDGE gives one loop of two equal crossing cylinders, 4 sqrt2 r E(1/2) (Steinmetz)", () => {
    const edge = callByName(tunnelHoleEdge, { diameter: 200, entrance: 45, flare: 0 });
    expect(edge / 100).toBeCloseTo(7.640395578, 8);
  });
});

describe("place and wall", () => {
  it("TUNNEL.WATER of 185 mm through a barge of 3 m beam is 82.657 kg (lost buoyancy, own arithmetic)", () => {
    expect(callByName(tunnelWater, { diameter: 185, length: 3000 })).toBeCloseTo(82.657, 3);
  });

  it("TUNNEL.VENTILATION gives the curve from memory and TUNNEL.SUBMERGED the circular segment (4 decimals)", () => {
    const rows = rowsOf("ventilation.csv");
    expect(rows).toHaveLength(31);
    for (const row of rows) {
      const given = { axisDepth: 100 * cell(row, "depth"), diameter: 200 };
      expect(callByName(tunnelVentilation, given)).toBeCloseTo(cell(row, "factor"), 4);
      expect(callByName(tunnelSubmerged, given)).toBeCloseTo(cell(row, "share"), 4);
    }
  });

  it.each(rowsOf("back-face.csv"))(
    "back face and recess of a $diameter mm tunnel at $entrance degrees (own arithmetic, 2 and 1 decimals)",
    (row) => {
      const given = { diameter: cell(row, "diameter"), entrance: cell(row, "entrance") };
      expect(callByName(tunnelBackFace, given)).toBeCloseTo(cell(row, "seen"), 2);
      expect(callByName(tunnelRecessDepth, given)).toBeCloseTo(cell(row, "depth"), 2);
      // The area seen from ahead is the hole's own, foreshortened.
      const hole = callByName(tunnelHoleArea, { ...given, flare: 0 }) * 1e6;
      expect(hole * Math.sin((cell(row, "entrance") * Math.PI) / 180)).toBeCloseTo(cell(row, "seen_area"), 1);
      expect(callByName(tunnelRecess, { ...given, added: 10 })).toBeCloseTo(cell(row, "recess_10"), 1);
      expect(callByName(tunnelRecess, { ...given, added: 15 })).toBeCloseTo(cell(row, "recess_15"), 1);
    },
  );

  it.each(rowsOf("tunnel-wall.csv"))(
    "TUNNEL.WALL beside a shell of $shell mm (Lloyd's Register, Special Service Craft, July 2022, Pt 3 Ch 3 s4.3.1)",
    (row) => {
      expect(callByName(tunnelWall, { shell: cell(row, "shell") })).toBeCloseTo(cell(row, "tube"), 2);
    },
  );

  it.each(rowsOf("tunnel-water.csv"))("TUNNEL.WATER in a metre of $diameter mm (own arithmetic, 3 decimals)", (row) => {
    const given = { diameter: cell(row, "diameter"), length: 1000 };
    expect(callByName(tunnelWater, given)).toBeCloseTo(cell(row, "at_1025"), 3);
    expect(callByName(tunnelWater, { ...given, density: 1000 })).toBeCloseTo(cell(row, "litres"), 3);
    expect(callByName(tunnelWater, { ...given, density: 1026.021 })).toBeCloseTo(cell(row, "at_1026_021"), 3);
    expect(callByName(tunnelWater, { ...given, density: 999.1026 })).toBeCloseTo(cell(row, "at_999_1026"), 3);
  });
});
