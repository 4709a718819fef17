import { describe, expect, it } from "vitest";
import { unitFindings } from "../../src/audit/units/cell";
import { definitionFindings } from "../../src/audit/units/definition";
import type { AnyDefinition } from "../../src/formula/definition";
import { catalogue } from "../../src/functions";
import { LiveNotebook } from "../../src/notebook/live";
import { formulaCells, worked, workedFolders } from "../notebook/worked";
import { type Given, type UnitCase, unitCells } from "./unit-page";

/** Quantities with their right units; every formula below reads some of them. */
const given: Given = {
  depth: ["mm", "300"],
  breadth: ["mm", "185"],
  run: ["m", "12"],
  length: ["m", "8"],
  draught: ["m", "0.6"],
  current: ["A", "300"],
  resistance: ["mohm", "4"],
  outside: ["ohm", "0.004"],
  volts: ["V", "12"],
  nominal: ["V", "10.5"],
  ambient: ["degC", "20"],
  warm: ["degC", "55"],
  limit: ["degC", "105"],
  rise: ["K", "30"],
  flare: ["deg", "15"],
  entrance: ["deg", "20"],
  force: ["N", "900"],
  push: ["N", "700"],
  speed: ["m/s", "6"],
  density: ["kg/m3", "1025"],
  sheet: ["m2", "2.5"],
  fabric: ["g/m2", "450"],
  mass: ["kg", "12"],
  minutes: ["min", "3"],
  hours: ["h", "2"],
  capacity: ["Ah", "100"],
  power: ["W", "3000"],
  size: ["mm2", "95"],
  share: ["1", "0.8"],
  count: ["1", "3"],
  price: ["money/kg", "12"],
  rate: ["money/h", "60"],
  kind: ["", "series"],
  alpha: ["1/K", "0.00393"],
  gravity: ["m/s2", "9.80665"],
};

/** Formulas that are right, with the unit of their result. */
const right: readonly (readonly [formula: string, unit: string])[] = [
  ["depth-breadth/2", "mm"],
  ["(depth-breadth/2)/breadth", "1"],
  ["run*1000-depth", "mm"],
  ["depth/1000+run", "m"],
  ["current*resistance/1000", "V"],
  ["volts-current*resistance/1000", "V"],
  ["current*outside", "V"],
  ["current*outside*1000", "mV"],
  ["current^2*outside", "W"],
  ["volts*current", "W"],
  ["volts*current/1000", "kW"],
  ["volts/nominal-1", "margin"],
  ["1-(warm-ambient)/(limit-ambient)", "margin"],
  ["warm-ambient", "K"],
  ["ambient+rise", "degC"],
  ["limit-rise", "degC"],
  ["MAX(warm,ambient)", "degC"],
  ["AVERAGE(warm,ambient)", "degC"],
  ["outside*(1+alpha*(warm-ambient))", "ohm"],
  ["TAN(RADIANS(flare))", "1"],
  ["SQRT(TAN(RADIANS(flare))^2+TAN(RADIANS(entrance))^2)", "1"],
  ["DEGREES(ATAN(depth/breadth))", "deg"],
  ["DEGREES(ATAN2(depth,breadth))", "deg"],
  ["flare+entrance", "deg"],
  ["breadth*TAN(RADIANS(entrance))", "mm"],
  ["density*speed^2/2", "Pa"],
  ["density/2*speed^2*sheet", "N"],
  ["density*gravity*draught", "Pa"],
  ["PI()*breadth^2/4", "mm2"],
  ["PI()*breadth^2/4/1000000", "m2"],
  ["SQRT(depth^2+breadth^2)", "mm"],
  ["(breadth^3)^(1/3)", "mm"],
  ["sheet*fabric/1000", "kg"],
  ["mass*price", "money"],
  ["hours*60", "min"],
  ["minutes/60", "h"],
  ["minutes*60", "s"],
  ["rate*hours", "money"],
  ["capacity*volts", "Wh"],
  ["capacity/hours", "A"],
  ["power/volts", "A"],
  ['IF(kind="series",force,push)', "N"],
  ["IF(force>push,0,push-force)", "N"],
  ["IFERROR(force/push,0)", "1"],
  ["MIN(force,push)/MAX(force,push)-1", "margin"],
  ["ROUND(depth,0)", "mm"],
  ["CEILING(depth,1)", "mm"],
  ["SUM(depth,breadth)", "mm"],
  ["CONDUCTOR.DROP(current,run,size,warm,count)", "V"],
  ["1-CONDUCTOR.DROP(current,run,size,warm)/(volts*share)", "margin"],
  ["CONDUCTOR.RESISTANCE(size,run,warm)*1000", "mohm"],
  ["TUNNEL.COVER(depth,breadth)", "mm"],
  ["TUNNEL.HALFLENGTH(depth,breadth,entrance,flare,0*flare)", "mm"],
  ["STOCK.PACKS(mass,share,mass)", "1"],
  ['CONVERT(depth,"mm","m")', "m"],
  ["force*run", "N m"],
  ["EXP(-minutes/hours/60)", "1"],
  ["LN(depth/breadth)", "1"],
];

/** What the audit finds in each case. */
function found(cases: readonly UnitCase[]): string[][] {
  const { live, at } = unitCells(cases);
  const messages = at.map((cell) => unitFindings(live, cell).map(({ message }) => message));
  live.close();
  return messages;
}

/** Unit texts that are one slip away. */
const slips: Readonly<Record<string, string>> = {
  mm: "m",
  m: "mm",
  mohm: "ohm",
  ohm: "mohm",
  "g/m2": "kg/m2",
  kg: "g",
  W: "kW",
  A: "mA",
  min: "h",
  h: "min",
  mm2: "cm2",
  m2: "mm2",
  deg: "rad",
  degC: "K",
  V: "mV",
};

type Fault = UnitCase & { readonly kind: string };

/** Every single fault of the kinds below that can be made in a formula. */
function faults(formula: string, unit: string): Fault[] {
  const reads = (name: string) => new RegExp(`(?<![\\w.])${name}(?![\\w.(])`).test(formula);
  const made: Fault[] = [];
  for (const [name, [own, value]] of Object.entries(given)) {
    const slip = slips[own];
    if (reads(name) && slip) {
      made.push({ kind: "unit of an input", formula, unit, given: { ...given, [name]: [slip, value] } });
    }
  }
  const wrong = { mm: "mm2", m: "mm", V: "A", N: "kg", W: "kW", kW: "W", "1": "mm", margin: "N", degC: "K", K: "degC" };
  made.push({
    kind: "unit of the result",
    formula,
    unit: wrong[unit as keyof typeof wrong] ?? "N",
    given,
  });
  for (const [kind, pattern, instead] of [
    ["square dropped", /\^2/g, ""],
    ["RADIANS left out", /RADIANS\((\w+)\)/g, "$1"],
    ["two degC added", /(warm|limit)-ambient/g, "$1+ambient"],
  ] as const) {
    for (const found of formula.matchAll(pattern)) {
      const changed = found[0].replace(pattern, instead);
      const start = formula.slice(0, found.index);
      const rest = formula.slice((found.index ?? 0) + found[0].length);
      made.push({ kind, formula: start + changed + rest, unit, given });
    }
  }
  return made;
}

describe("the audit of units", () => {
  it("finds nothing in formulas that are right", () => {
    const cases = right.map(([formula, unit]) => ({ given, formula, unit }));
    const all = found(cases);
    cases.forEach(({ formula, unit }, i) => {
      expect([formula, unit, all[i]]).toEqual([formula, unit, []]);
    });
  });

  it("finds at least 95 of 100 seeded slips: mm for m, a lost square, a wrong row unit, no RADIANS, degC + degC", () => {
    const all = right.flatMap(([formula, unit]) => faults(formula, unit));
    const results = found(all);
    const missed = all.filter((_, i) => results[i]?.length === 0);
    expect(new Set(all.map(({ kind }) => kind)).size).toBe(5);
    expect(all.length).toBeGreaterThan(150);
    const listed = missed.map(({ kind, formula, unit }) => `${kind}: ${formula} in ${unit}`).join("; ");
    expect(1 - missed.length / all.length, listed).toBeGreaterThanOrEqual(0.95);
  });

  const told = [
    ["depth+run", "mm", "+: depth is in mm, run in m (factor 1000); they need one unit"],
    ["density*speed^2*sheet/2", "kg", "the row says kg, the formula gives N"],
    ["volts*current", "kW", "the row says kW, the formula gives W (factor 1000)"],
    ["current*resistance", "V", "the row says V, the formula gives 0.001 V (factor 1000)"],
    ["CONDUCTOR.DROP(current,depth,size)", "V", "CONDUCTOR.DROP, run: wants m, depth is in mm (factor 1000)"],
    ["IF(depth>breadth,force,mass)", "N", "IF, branches: force is in N, mass in kg; they need one unit"],
    ["TAN(flare)", "1", "TAN: flare is in deg, TAN takes radians; write TAN(RADIANS(flare))"],
    ["warm+ambient", "degC", "+: warm and ambient are both temperatures in degC; they have no sum"],
    ["warm*2", "degC", "*: warm is a temperature in degC; subtract a reference temperature first"],
    ["run^force", "m", "^: the exponent of run (m) is not a typed number, so the result has no unit"],
    ["warm-20", "degC", "-: 20 is typed without a unit beside degC; give it a row with its unit"],
    ["current>300", "", ">: 300 is typed without a unit beside A; give it a row with its unit"],
    ["LN(depth)", "1", "LN: wants 1, depth is in mm"],
    ["XLOOKUP(depth,run,force)", "N", "XLOOKUP: depth is in mm, run in m (factor 1000); they need one unit"],
    ["SUM(depth,run)", "mm", "SUM: depth is in mm, run in m (factor 1000); they need one unit"],
    ["STOCK.PACKS(mass,share,sheet)", "1", "STOCK.PACKS, pack: mass is in kg, sheet in m2; they need one unit"],
    ["depth*2", "", "the row has no unit, the formula gives mm"],
  ] as const;

  it("says what does not fit, where, and by what factor", () => {
    const all = found(told.map(([formula, unit]) => ({ given, formula, unit })));
    told.forEach(([formula, , message], i) => {
      expect([formula, ...(all[i] ?? [])]).toContain(message);
    });
  });

  it("follows the engine's order of operations: a minus binds before a power", () => {
    expect(found([{ given, formula: "-depth^2+breadth^2", unit: "mm2" }])).toEqual([[]]);
  });

  it.each(workedFolders)("finds nothing in %s, and takes less than 2 s", { timeout: 60_000 }, (folder) => {
    const live = new LiveNotebook(worked(folder));
    const cells = formulaCells(live.notebook);
    const times = [1, 2, 3].map(() => {
      const start = performance.now();
      const told = cells.flatMap((cell) =>
        unitFindings(live, cell).map(({ message }) => `${live.text(cell)} ${message}`),
      );
      expect(told).toEqual([]);
      return performance.now() - start;
    });
    expect(Math.min(...times)).toBeLessThan(2000);
    live.close();
  });
});

describe("the audit of units of the named functions", () => {
  it.each(catalogue)("$name: every step closes", (definition) => {
    expect(definitionFindings(definition)).toEqual([]);
  });

  it("finds a wrong unit in every step of algebra whose unit is changed", () => {
    let changed = 0;
    for (const definition of catalogue) {
      definition.steps.forEach((step, i) => {
        if (step.kind !== "algebra" || step.unit === "any") return;
        const unit = step.unit === "money" ? "kg" : "money";
        const steps = definition.steps.with(i, { ...step, unit }) as unknown as AnyDefinition["steps"];
        const told = definitionFindings({ ...definition, steps });
        changed++;
        expect(told.length, `${definition.name} ${step.symbol}: ${step.formula}`).toBeGreaterThan(0);
      });
    }
    expect(changed).toBeGreaterThan(100);
  });

  it("finds a constant that is a thousand times off in scale", () => {
    const drop = catalogue.find(({ name }) => name === "CONDUCTOR.DROP") as AnyDefinition;
    const constants = Object.fromEntries(
      Object.entries(drop.constants ?? {}).map(([name, constant]) => [
        name,
        constant.unit === "m/km" ? { ...constant, unit: "mm/m" as const } : constant,
      ]),
    );
    expect(definitionFindings({ ...drop, constants })).toEqual([]);
    const plain = Object.fromEntries(
      Object.entries(constants).map(([name, constant]) => [
        name,
        constant.unit === "mm/m" ? { ...constant, unit: "1" as const } : constant,
      ]),
    );
    expect(definitionFindings({ ...drop, constants: plain })[0]?.message).toContain("factor 1000");
  });
});
