import { unit } from "mathjs";
import { describe, expect, it } from "vitest";
import { bevelVolume } from "../../src/functions/joint/bevel-volume";
import { bevelWidth } from "../../src/functions/joint/bevel-width";
import { fabricFraction } from "../../src/functions/joint/fabric-fraction";
import { fabricGrams } from "../../src/functions/joint/fabric-grams";
import { fabricMixed } from "../../src/functions/joint/fabric-mixed";
import { joint } from "../../src/functions/joint/index";
import { jointHullBand } from "../../src/functions/joint/joint-hull-band";
import { jointPlies } from "../../src/functions/joint/joint-plies";
import { jointShell } from "../../src/functions/joint/joint-shell";
import { jointTubeBand } from "../../src/functions/joint/joint-tube-band";
import { plyCount } from "../../src/functions/joint/ply-count";
import { plyDensity } from "../../src/functions/joint/ply-density";
import { plyFraction } from "../../src/functions/joint/ply-fraction";
import { plyResin } from "../../src/functions/joint/ply-resin";
import { plyThickness } from "../../src/functions/joint/ply-thickness";
import { plyVolume } from "../../src/functions/joint/ply-volume";
import { offsetArea } from "./offset-ellipse";
import { refuses, refusesEveryBadArgument } from "./refusals";
import { agrees, byUnits, callByName } from "./second-calculation";

describe("plies, against the units library", () => {
  it.each([
    [plyThickness, "fabric / fibre + fabric * (1 - fraction) / (fraction * resin)"],
    [plyResin, "fabric / fraction - fabric"],
    [plyVolume, "1 / (1 + (1 - fraction) / fraction * fibre / resin)"],
    [plyDensity, "unit(1, 'kg') / (fraction * unit(1, 'kg') / fibre + (1 - fraction) * unit(1, 'kg') / resin)"],
    [plyFraction, "1 - ratio / (1 + ratio)"],
    [jointShell, "shell + shell / 2"],
  ])("$name agrees with %s", (definition, expression) => {
    agrees(definition, byUnits(definition, expression));
  });

  it("a ply's volume share of fibre fills its thickness with the fabric's own volume", () => {
    agrees(plyThickness, ({ fabric = 0, fraction = 0, fibre = 0, resin = 0 }) => {
      const share = callByName(plyVolume, { fraction, fibre, resin });
      return fabric / 1000 / fibre / share;
    });
  });

  it("PLY.COUNT is the least number of plies that reaches the thickness", () => {
    const counted = ({ thickness = 0, each = 1 }) => {
      let plies = 0;
      while (plies * each < thickness) plies += 1;
      return plies;
    };
    agrees(plyCount, counted, {
      within: { thickness: [0, 40], each: [0.1, 5] },
      // Where the plies make the thickness exactly, the function takes off a billionth of a ply.
      where: ({ thickness = 0, each = 1 }) => Math.abs(thickness / each - Math.round(thickness / each)) > 1e-8,
    });
    expect(callByName(plyCount, { thickness: 0.3, each: 0.1 })).toBe(3);
    expect(callByName(plyCount, { thickness: 0, each: 0.1 })).toBe(0);
  });
});

describe("fabrics", () => {
  it.each(["ft2", "yd2"])("FABRIC.GRAMS per %s agrees with the units library", (per) => {
    const area = unit(1, per === "ft2" ? "ft^2" : "yd^2");
    for (let ounces = 0.5; ounces <= 200; ounces += 0.5) {
      const wanted = unit(ounces, "ounce").divide(area);
      if (typeof wanted === "number") throw new Error("no unit left");
      expect(Math.abs(callByName(fabricGrams, { ounces, per }) / wanted.toNumber("g/m^2") - 1)).toBeLessThan(1e-9);
    }
  });

  it("FABRIC.MIXED runs straight from roving to mat on each surface", () => {
    for (const surface of ["simple", "complex", "vacuum"]) {
      const at = (mat: number) => callByName(fabricMixed, { mat, surface });
      for (let mat = 0; mat <= 1; mat += 1 / 128) {
        expect(at(mat)).toBeCloseTo(at(0) * (1 - mat) + at(1) * mat, 12);
      }
    }
  });

  it("FABRIC.FRACTION is leanest on a complex surface and richest under vacuum", () => {
    for (const reinforcement of ["mat", "woven roving", "multidirectional", "unidirectional"]) {
      const [complex, simple, vacuum] = ["complex", "simple", "vacuum"].map((surface) =>
        callByName(fabricFraction, { reinforcement, surface }),
      ) as [number, number, number];
      expect(complex).toBeLessThan(simple);
      expect(simple).toBeLessThan(vacuum);
    }
  });
});

describe("bands round the joint", () => {
  it("JOINT.HULLBAND agrees with a ring by its middle circle, in the units library", () => {
    agrees(jointHullBand, byUnits(jointHullBand, "width * 2 pi * (edge / 2 / pi + width / 2)"));
  });

  it("JOINT.HULLBAND agrees with the area between an ellipse and its parallel curve, from the corners", () => {
    for (const [a, b, width] of [
      [100, 100, 50],
      [115.47, 100, 75],
      [200, 100, 150],
      [260, 75, 20],
    ] as const) {
      const { edge, area } = offsetArea(a, b, width);
      expect(Math.abs(callByName(jointHullBand, { edge, width }) / (area / 1e6) - 1)).toBeLessThan(1e-9);
    }
  });

  it("JOINT.TUBEBAND agrees with the units library", () => {
    agrees(jointTubeBand, byUnits(jointTubeBand, "2 pi * (diameter / 2) * width"));
  });

  it("JOINT.PLIES agrees with the closed forms of its sums", () => {
    agrees(jointPlies, ({ diameter = 0, edge = 0, first = 0, step = 0, count = 0 }) => {
      const last = count - 1;
      const legs = count * first + (step * count * last) / 2;
      const squares =
        count * first ** 2 + first * step * count * last + (step ** 2 * last * count * (2 * count - 1)) / 6;
      return ((Math.PI * diameter + edge) * legs + Math.PI * squares) / 1e6;
    });
  });

  it("JOINT.PLIES of one ply is the two bands", () => {
    const given = { diameter: 185, edge: 609.8253 };
    const bands =
      callByName(jointHullBand, { edge: given.edge, width: 60 }) +
      callByName(jointTubeBand, { diameter: given.diameter, width: 60 });
    expect(callByName(jointPlies, { ...given, first: 60, step: 30, count: 1 })).toBeCloseTo(bands, 12);
  });
});

describe("bevels", () => {
  it("BEVEL.WIDTH agrees with the units library", () => {
    agrees(bevelWidth, byUnits(bevelWidth, "thickness / (1 / ratio)"));
  });

  it("BEVEL.VOLUME agrees with a cut cone less the hole, in the units library", () => {
    agrees(
      bevelVolume,
      byUnits(
        bevelVolume,
        "pi * thickness / 3 * ((holeRadius + ratio * thickness)^2 + (holeRadius + ratio * thickness) * holeRadius" +
          " + holeRadius^2) - pi * holeRadius^2 * thickness",
      ),
      // The difference of two large volumes keeps fewer digits for a thin bevel round a wide hole.
      { within: { thickness: [1, 200] } },
    );
  });
});

describe("refusals", () => {
  it.each(joint.map((definition) => [definition.name, definition] as const))(
    "%s names the argument",
    (_, definition) => {
      refusesEveryBadArgument(definition, definition.examples[0].given);
    },
  );

  it("a word that is no choice is named with the choices", () => {
    refuses(fabricGrams, { ounces: 1, per: "m2" }, "range", 'per: "m2" (allowed "ft2" or "yd2")');
    refuses(fabricGrams, { ounces: 1, per: 2 }, "kind", "per: got 2, needs text");
    refuses(fabricFraction, { reinforcement: "felt" }, "range", /^reinforcement: "felt" \(allowed "mat" or /);
    refuses(fabricFraction, { reinforcement: "mat", surface: "flat" }, "range", /^surface: "flat" \(allowed "simple"/);
  });

  it("half a ply is no count", () => {
    const good = { diameter: 200, edge: 628, first: 50, step: 25, count: 4 };
    refuses(jointPlies, { ...good, count: 2.5 }, "kind", "count: 2.5, needs a whole number");
  });
});
