import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { iec61238, ul486a } from "../../tables/electrical-sources";
import { decide } from "../conductor/cautions";

export const lugPull = defineFunction({
  name: "LUG.PULL",
  title: "Pull that a crimped lug must hold",
  args: { area: { unit: "mm2", about: "copper in the barrel", min: 0, aboveMin: true, max: 1000 } },
  constants: {
    each: { value: 60, unit: "N/mm2", about: "copper", source: iec61238 },
    most: { value: 20000, unit: "N", about: "highest pull of the test", source: iec61238 },
  },
  steps: [
    { kind: "algebra", symbol: "F", formula: "min(each * area, most)", unit: "N", why: "by area, up to the cap" },
  ],
  valid:
    "Copper conductor and lug, on a sample made with the same tool and die. UL 486A by gauge asks about a third of it at like size; the table of that pull-out is on the Tables page. A crimp that holds may still have a poor joint: measure its voltage drop as well.",
  caution: `A lug that lets go of a live conductor sparks and sets fire: pull samples on a bench, behind a guard, never a lug in service (IEC 61238-1, UL 486A). ${decide}`,
  sources: [iec61238, ul486a],
  examples: [
    { given: { area: 35 }, expect: 2100, within: 0, source: iec61238 },
    { given: { area: 120 }, expect: 7200, within: 0, source: iec61238 },
    { given: { area: 400 }, expect: 20000, within: 0, source: identity("60·400 = 24000, capped at 20000") },
  ],
});
