import { describe, expect, it } from "vitest";
import { callFunction } from "../../src/formula/call";
import type { AnyDefinition } from "../../src/formula/definition";
import { Fault } from "../../src/formula/fault";
import { hullBend } from "../../src/functions/hull/bend";
import { hullBreadth } from "../../src/functions/hull/breadth";
import { hullEntrance } from "../../src/functions/hull/entrance";
import { hullFlare } from "../../src/functions/hull/flare";
import { hullHalfLength } from "../../src/functions/hull/half-length";
import { hullHoleArea } from "../../src/functions/hull/hole-area";
import { hullHoleEdge } from "../../src/functions/hull/hole-edge";
import { hullMeanLength } from "../../src/functions/hull/mean-length";
import { hullStock } from "../../src/functions/hull/stock";
import { hullTrim } from "../../src/functions/hull/trim";
import { hullWater } from "../../src/functions/hull/water";
import { tunnelHalfLength } from "../../src/functions/tunnel/half-length";
import { tunnelHoleArea } from "../../src/functions/tunnel/hole-area";
import { tunnelHoleEdge } from "../../src/functions/tunnel/hole-edge";
import { tunnelStock } from "../../src/functions/tunnel/stock";
import { tunnelTrim } from "../../src/functions/tunnel/trim";
import { cell, rowsOf } from "./values";
import { yachtHull } from "./yacht-hull";

type Grid = readonly [stations: number[], heights: number[], offsets: number[]];

/** Offsets of a surface on `lines` by `lines` places, `spacing` mm apart, around an axis; `y` takes mm forward and up. */
function measured(y: (x: number, z: number) => number, x0: number, z0: number, spacing: number, lines: number): Grid {
  const places = Array.from({ length: lines }, (_, i) => (i - (lines - 1) / 2) * spacing);
  const stations = places.map((place) => x0 + place);
  const heights = places.map((place) => z0 + place);
  return [stations, heights, heights.flatMap((z) => stations.map((x) => y(x, z)))];
}

const number = (definition: AnyDefinition, ...given: Parameters<typeof callFunction>[1]): number =>
  Number(callFunction(definition, given));

const angles = [
  ["top", 0],
  ["fore", 90],
  ["bottom", 180],
  ["aft", 270],
] as const;

const sentence = (call: () => unknown): string => {
  try {
    return `answered ${String(call())}`;
  } catch (problem) {
    if (problem instanceof Fault) return problem.sentence;
    throw problem;
  }
};

describe("a curved hull: the Wigley hull from 5 by 5 offsets 100 mm apart", () => {
  it.each(rowsOf("wigley-tunnel.csv").map((row, i) => [i + 1, row] as const))(
    "tunnel %i: half-lengths, mean, edge and water within 0.1 mm of the closed form",
    (_number, row) => {
      const [half, beam, depth] = [cell(row, "L") / 2, cell(row, "B") / 2, cell(row, "T")].map((m) => m * 1000) as [
        number,
        number,
        number,
      ];
      const y = (x: number, z: number) => beam * (1 - (x / half) ** 2) * (1 - (z / depth) ** 2);
      const x0 = half - cell(row, "s_aft_of_stem") * 1000;
      const z0 = cell(row, "z_axis") * 1000;
      const D = cell(row, "D") * 1000;
      const grid = measured(y, x0, z0, 100, 5);
      for (const [name, angle] of angles) {
        expect(
          Math.abs(number(hullHalfLength, ...grid, x0, z0, D, angle) - cell(row, `l_${name}`) * 1000),
        ).toBeLessThan(1e-3);
        const flat = number(
          tunnelHalfLength,
          number(hullBreadth, ...grid, x0, z0),
          D,
          number(hullEntrance, ...grid, x0, z0),
          number(hullFlare, ...grid, x0, z0),
          angle,
        );
        expect(Math.abs(flat - cell(row, `pl_${name}`) * 1000)).toBeLessThan(1e-3);
      }
      expect(Math.abs(number(hullMeanLength, ...grid, x0, z0, D) - cell(row, "mean_l_analytic") * 1000)).toBeLessThan(
        1e-4,
      );
      expect(Math.abs(number(hullHoleEdge, ...grid, x0, z0, D) - cell(row, "hole_edge_perimeter") * 1000)).toBeLessThan(
        1e-3,
      );
      expect(
        Math.abs(number(hullWater, ...grid, x0, z0, D, 1000) - cell(row, "tunnel_volume_analytic") * 1000),
      ).toBeLessThan(1e-4);
      expect(Math.abs(number(hullEntrance, ...grid, x0, z0) - cell(row, "alpha_deg"))).toBeLessThan(1e-4);
      expect(Math.abs(number(hullFlare, ...grid, x0, z0) - cell(row, "beta_deg"))).toBeLessThan(1e-4);
    },
  );
});

const yacht = rowsOf("yacht-hull-curved.csv");
/** Greatest error of 24 half-lengths of a tunnel against the formula, mm. Stations count forward; the stem lies at 0. */
function yachtError(row: (typeof yacht)[number], spacing: number): number {
  const [x0, z0, D] = [-cell(row, "x0_m") * 1000, cell(row, "z0_m") * 1000, cell(row, "D_m") * 1000] as const;
  // One line past the tube on either side.
  const lines = 2 * (Math.ceil(D / 2 / spacing) + 1) + 1;
  const grid = measured((x, z) => yachtHull(-x, z), x0, z0, spacing, lines);
  const errors = Array.from({ length: 24 }, (_, i) => {
    const turn = (i * Math.PI) / 12;
    const skin = yachtHull(-(x0 + (D / 2) * Math.sin(turn)), z0 + (D / 2) * Math.cos(turn));
    return Math.abs(number(hullHalfLength, ...grid, x0, z0, D, i * 15) - skin);
  });
  return Math.max(...errors);
}

describe("a curved hull: the closed-form 10.8 m yacht hull", () => {
  it("is the formula of the check values: half-breadth at the axis, top, fore, bottom and aft", () => {
    for (const row of yacht) {
      const [x0, z0, R] = [cell(row, "x0_m") * 1000, cell(row, "z0_m") * 1000, cell(row, "D_m") * 500] as const;
      for (const [name, angle] of angles) {
        const turn = (angle * Math.PI) / 180;
        const skin = yachtHull(x0 - R * Math.sin(turn), z0 + R * Math.cos(turn));
        expect(Math.abs(skin - cell(row, name) * 1000)).toBeLessThan(1e-3);
      }
      expect(
        Math.abs(yachtHull(cell(row, "x0_m") * 1000, cell(row, "z0_m") * 1000) - cell(row, "b_m") * 1000),
      ).toBeLessThan(1e-3);
    }
  });

  it.each(yacht.map((row, i) => [i + 1, row] as const))(
    "tunnel %i: within 1 mm from offsets 50 mm apart",
    (_number, row) => {
      expect(yachtError(row, 50)).toBeLessThan(1);
    },
  );

  it.each(yacht.map((row, i) => [i + 1, row] as const))(
    "tunnel %i: mean and water from offsets 25 mm apart",
    (_number, row) => {
      const [x0, z0, D] = [-cell(row, "x0_m") * 1000, cell(row, "z0_m") * 1000, cell(row, "D_m") * 1000] as const;
      const grid = measured((x, z) => yachtHull(-x, z), x0, z0, 25, 15);
      expect(Math.abs(number(hullMeanLength, ...grid, x0, z0, D) - cell(row, "mean_half_length") * 1000)).toBeLessThan(
        0.02,
      );
      expect(Math.abs(number(hullWater, ...grid, x0, z0, D, 1000) - cell(row, "tunnel_volume_m3") * 1000)).toBeLessThan(
        0.002,
      );
      const bend = number(hullBend, ...grid, x0, z0, D);
      expect(bend).toBeGreaterThan(cell(row, "max_flat_error_mm") - 0.2);
    },
  );

  it("reports its error against spacing, which falls as the offsets lie closer", async () => {
    const spacings = [100, 50, 25];
    const table = yacht.map((row) => spacings.map((spacing) => yachtError(row, spacing)));
    const lines = table.map(
      (errors, i) => `tunnel ${i + 1}: ${errors.map((error, k) => `${spacings[k]} mm ${error.toFixed(3)}`).join(", ")}`,
    );
    await expect(
      `Greatest error of 24 half-lengths in mm, by spacing of the offsets\n${lines.join("\n")}\n`,
    ).toMatchFileSnapshot("hull-spacing.txt");
    for (const [wide = 0, middle = 0, close = 0] of table) {
      expect(middle).toBeLessThan(wide);
      expect(close).toBeLessThan(middle);
    }
  });
});

describe("a curved hull: a round bow, a tube through a cylinder (closed forms, complete elliptic integrals)", () => {
  // A tube as wide as the cylinder itself would leave the hull at its sides, and is refused.
  it.each(rowsOf("cylinder-tunnel.csv").filter((row) => cell(row, "r_tube") < cell(row, "R_hull")))(
    "radius $R_hull, tube $r_tube: mean, edge and common volume to 1e-4 from offsets a tenth of the tube's radius apart",
    (row) => {
      const size = cell(row, "R_hull") === 1000 ? 1 : 1000;
      const [R, r] = [cell(row, "R_hull") * size, cell(row, "r_tube") * size];
      const grid = measured((x) => Math.sqrt(R * R - x * x), 0, 0, r / 10, 27);
      const relative = (got: number, wanted: number) => Math.abs(got / wanted - 1);
      if (2 * r > 1000) return;
      expect(relative(number(hullMeanLength, ...grid, 0, 0, 2 * r), cell(row, "mean_half_length") * size)).toBeLessThan(
        1e-7,
      );
      expect(relative(number(hullHoleEdge, ...grid, 0, 0, 2 * r), cell(row, "one_loop_length") * size)).toBeLessThan(
        1e-5,
      );
      expect(
        relative(number(hullWater, ...grid, 0, 0, 2 * r, 1000) * 1e6, cell(row, "V_common_formula") * size ** 3),
      ).toBeLessThan(1e-6);
    },
  );
});

describe("a curved hull: the bow of an open research vessel", () => {
  const rows = rowsOf("research-vessel-offsets.csv");
  const columns = Object.keys(rows[0] ?? {}).slice(1, 9);
  const stations = columns.map((name) => Number(/x=([\d.]+)/.exec(name)?.[1]) * 1000);
  const heights = rows.slice(0, 8).map((row) => cell(row, "z_m_above_base") * 1000);
  const offsets = rows.slice(0, 8).flatMap((row) => columns.map((name) => Number(row[name] ?? 0) * 1000));
  const grid: Grid = [stations, heights, offsets];
  // The offsets are printed to 0.1 mm, the check values to 0.01 mm: half of each.
  const printed = 0.05 + 0.005;

  it.each(
    rowsOf("research-vessel-tunnel.csv").map((row) => [cell(row, "phi_deg"), cell(row, "half_length_m")] as const),
  )("read with straight lines, at %d degrees %d m", (angle, metres) => {
    expect(
      Math.abs(number(hullHalfLength, ...grid, 30_000, 1250, 800, angle, "straight") - metres * 1000),
    ).toBeLessThan(printed);
  });

  it("read with splines passes through every offset near the tunnel", () => {
    for (const [i, station] of stations.slice(0, 5).entries()) {
      for (const [k, height] of heights.slice(1, 6).entries()) {
        const offset = offsets[(k + 1) * stations.length + i] ?? 0;
        expect(number(hullBreadth, ...grid, station, height)).toBeCloseTo(offset, 6);
      }
    }
  });

  it("says where a tunnel would run off the hull: past the stem and below the keel", () => {
    expect(sentence(() => number(hullHalfLength, ...grid, 32_600, 700, 800, 0))).toBe(
      "offsets: 0 at station 31900 mm, height 0 mm: the grid runs off the hull under the tunnel there; move the tunnel or measure closer to it",
    );
    expect(sentence(() => number(hullHalfLength, ...grid, 30_000, 300, 800, 0))).toBe(
      "heights: the grid holds 0 to 3500 mm, the reading needs -100 to 700 mm; measure further out",
    );
  });
});

describe("a curved hull: a flat side gives what the flat-side functions give (identity)", () => {
  const tangent = (degrees: number) => Math.tan((degrees * Math.PI) / 180);
  const cases = [
    [185, 20, 15],
    [250, 5, -10],
    [300, 45, 40],
  ] as const;

  it.each(cases)("diameter %d, entrance %d, flare %d", (D, entrance, flare) => {
    const grid = measured((x, z) => 700 - x * tangent(entrance) + z * tangent(flare), 0, 0, 80, 6);
    const near = (got: number, wanted: number) =>
      expect(Math.abs(got - wanted)).toBeLessThan(1e-9 * Math.max(1, Math.abs(wanted)));
    for (const angle of [0, 15, 90, 200, 310]) {
      near(number(hullHalfLength, ...grid, 0, 0, D, angle), number(tunnelHalfLength, 700, D, entrance, flare, angle));
      near(number(hullTrim, ...grid, 0, 0, D, angle), number(tunnelTrim, D, entrance, flare, angle));
    }
    near(number(hullStock, ...grid, 0, 0, D, 25), number(tunnelStock, 700, D, entrance, flare, 25));
    near(number(hullHoleEdge, ...grid, 0, 0, D), number(tunnelHoleEdge, D, entrance, flare));
    near(number(hullHoleArea, ...grid, 0, 0, D), number(tunnelHoleArea, D, entrance, flare));
    near(number(hullBend, ...grid, 0, 0, D), 0);
  });
});
