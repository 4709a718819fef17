import { describe, expect, it } from "vitest";
import { batteryAir } from "../../src/functions/battery/air";
import { batteryBank } from "../../src/functions/battery/bank";
import { batteryOpening } from "../../src/functions/battery/opening";
import { batteryResistance } from "../../src/functions/battery/resistance";
import { batteryRuntime } from "../../src/functions/battery/runtime";
import { convert } from "../../src/functions/general/convert";
import { anodeHours } from "../../src/functions/service/anode-hours";
import { oilHead } from "../../src/functions/service/oil-head";
import { supplyFault } from "../../src/functions/supply/fault";
import { fuseNext } from "../../src/functions/supply/fuse-next";
import { lugPull } from "../../src/functions/supply/lug-pull";
import { callByName } from "../functions/second-calculation";
import { cell, rowsOf } from "./values";

// toBeCloseTo(value, n) allows half a unit of the n-th decimal: n is what the source prints.

describe("battery", () => {
  it.each([
    [650, 8.31, 1.5, 3.8],
    [800, 6.75, 1.9, 4.7],
    [1000, 5.4, 2.3, 5.8],
  ])("BATTERY.RESISTANCE and SUPPLY.FAULT of %d A cold cranking (SAE J537; 40 % warm by TM 9-8000)", (...row) => {
    const [cranking, milliohms, cold, warm] = row;
    const resistance = callByName(batteryResistance, { cranking });
    expect(resistance * 1000).toBeCloseTo(milliohms, 2);
    expect(callByName(supplyFault, { volts: 12.6, resistance }) / 1000).toBeCloseTo(cold, 1);
    expect(callByName(supplyFault, { volts: 12.6, resistance: 0.4 * resistance }) / 1000).toBeCloseTo(warm, 1);
  });

  it("BATTERY.BANK: six 6 V units of 2400 A give 7200 A at 12 V (published case)", () => {
    const resistance = callByName(batteryBank, { resistance: 6 / 2400, series: 2, parallel: 3 });
    expect(callByName(supplyFault, { volts: 12, resistance })).toBeCloseTo(7200, 9);
  });

  it("BATTERY.BANK: 110 cells of 0.5 mohm give 4.36 kA at 240 V, four strings 17.5 kA (guide to DC distribution)", () => {
    const one = callByName(batteryBank, { resistance: 0.0005, series: 110 });
    expect(one).toBeCloseTo(0.055, 12);
    expect(callByName(supplyFault, { volts: 240, resistance: one }) / 1000).toBeCloseTo(4.36, 2);
    const four = callByName(batteryBank, { resistance: one, parallel: 4 });
    expect(callByName(supplyFault, { volts: 240, resistance: four }) / 1000).toBeCloseTo(17.5, 1);
  });

  it.each([
    [100, 1.2, 5, 20, 3],
    [100, 1.2, 20, 3.789, 3],
    [100, 1.2, 200, 0.2391, 4],
    [250, 1.3, 20, 10.856, 3],
  ])("BATTERY.RUNTIME of %d Ah at 20 h, exponent %d, %d A (Peukert, own arithmetic)", (...row) => {
    const [capacity, exponent, current, hours, decimals] = row;
    expect(callByName(batteryRuntime, { capacity, rated: 20, exponent, current })).toBeCloseTo(hours, decimals);
  });

  it.each([
    [200, 11.93],
    [300, 7.19],
  ])(
    "BATTERY.RUNTIME of 100 Ah at 20 h, exponent 1.25, %d A is %d min (Peukert, own arithmetic)",
    (current, minutes) => {
      const hours = callByName(batteryRuntime, { capacity: 100, rated: 20, exponent: 1.25, current });
      expect(60 * hours).toBeCloseTo(minutes, 2);
    },
  );

  it("BATTERY.RUNTIME gives back the exponent from two of its answers (Peukert's two-test rule)", () => {
    const hours = (current: number) =>
      callByName(batteryRuntime, { capacity: 100, rated: 20, exponent: 1.25, current });
    expect(Math.log(hours(50) / hours(200)) / Math.log(200 / 50)).toBeCloseTo(1.25, 12);
  });

  it.each(rowsOf("battery-air.csv"))(
    "BATTERY.AIR and BATTERY.OPENING, $cells cells, $gassing mA/Ah, $capacity Ah (EN 50272-2, EN 50272-3)",
    (row) => {
      const given = { cells: cell(row, "cells"), gassing: cell(row, "gassing"), capacity: cell(row, "capacity") };
      const air = callByName(batteryAir, given);
      expect(air).toBeCloseTo(cell(row, "air"), 2);
      expect(callByName(batteryOpening, { air })).toBeCloseTo(cell(row, "opening"), 1);
    },
  );
});

describe("fuse, lug, header, anode", () => {
  it.each([
    [95.1, 100],
    [101, 110],
    [225, 225],
    [226, 250],
    [450.5, 500],
    [4001, 5000],
    [2, 3],
    [7, 10],
  ])("FUSE.NEXT of %d A is %d A (NEC 240.6(A))", (current, rating) => {
    expect(callByName(fuseNext, { current })).toBe(rating);
  });

  it("FUSE.NEXT in series R10 runs through the preferred numbers of ISO 3 from 63 to 630 A", () => {
    let current = 63;
    for (const number of [8, 10, 12.5, 16, 20, 25, 31.5, 40, 50, 63]) {
      current = callByName(fuseNext, { current: current + 1, series: "R10" });
      expect(current).toBe(10 * number);
    }
  });

  it.each([
    [
      "NEC",
      "NEC 240.6(A), with 1, 3, 6, 10 and 601 A for fuses",
      "1 3 6 10 15 20 25 30 35 40 45 50 60 70 80 90 100 110 125 150 175 200 225 250 300 350 400 450 500 600 601 700 800 " +
        "1000 1200 1600 2000 2500 3000 4000 5000 6000",
    ],
    [
      "R10",
      "IEC 60269 and lists of device ratings, from memory",
      "2 4 6 10 16 20 25 32 40 50 63 80 100 125 160 200 250 315 400 500 630 800 1000 1250 1600",
    ],
  ])("FUSE.NEXT in series %s stops at every rating of it and at no other (%s)", (series, _source, printed) => {
    const ratings = printed.split(" ").map(Number);
    const found: number[] = [];
    for (let current = 0.5; current <= (ratings.at(-1) ?? 0); current = (found.at(-1) ?? 0) + 0.01) {
      found.push(callByName(fuseNext, { current, series }));
    }
    expect(found).toEqual(ratings);
  });

  it.each(rowsOf("lug-pull.csv"))("LUG.PULL of $size mm2 is $newtons N (IEC 61238-1)", (row) => {
    const pull = callByName(lugPull, { area: cell(row, "size") });
    expect(pull).toBe(cell(row, "newtons"));
    expect(callByName(convert, { value: pull, from: "N", to: "lbf" })).toBeCloseTo(cell(row, "pounds"), 0);
  });

  it.each([
    [500, 76],
    [800, 121],
    [1000, 152],
  ])("OIL.HEAD over a seal %d mm deep is %d mm (own arithmetic, 1025 and 890 kg/m3)", (depth, head) => {
    expect(callByName(oilHead, { depth })).toBeCloseTo(head, 0);
  });

  it("ANODE.HOURS: 100 g of zinc at 1 A last 78 h (DNV-RP-B401, 780 Ah/kg)", () => {
    expect(callByName(anodeHours, { mass: 100, current: 1 })).toBeCloseTo(78, 9);
  });

  it.each([
    [780, 11.23],
    [2000, 4.38],
    [1230, 7.12],
  ])("ANODE.HOURS: %d Ah/kg is a year at 1 A from %d kg (DNV-RP-B401, ABS guidance 2017)", (capacity, kg) => {
    const hours = callByName(anodeHours, { mass: 1000, current: 1, capacity });
    expect(8760 / hours).toBeCloseTo(kg, 2);
  });

  it("ANODE.HOURS: 0.7019 kg of zinc, 80 % of it used, last a year at 50 mA (DNV-RP-B401)", () => {
    const hours = callByName(anodeHours, { mass: 0.8 * 701.9, current: 0.05 });
    // The mass is printed to 0.1 g in 701.9.
    expect(Math.abs(hours - 8760)).toBeLessThan((0.05 / 701.9) * 8760);
  });
});
