import type { AnyDefinition } from "../../formula/definition";
import { batteryAir } from "../battery/air";
import { batteryBank } from "../battery/bank";
import { batteryOpening } from "../battery/opening";
import { batteryResistance } from "../battery/resistance";
import { batteryRuntime } from "../battery/runtime";
import { motorSpeedPm } from "../motor/speed-pm";
import { motorSpeedSeries } from "../motor/speed-series";
import { anodeHours } from "../service/anode-hours";
import { oilHead } from "../service/oil-head";
import { supplyFault } from "../supply/fault";
import { fuseNext } from "../supply/fuse-next";
import { lugPull } from "../supply/lug-pull";
import { conductorAdiabatic } from "./adiabatic";
import { awgArea } from "./awg-area";
import { awgLeast } from "./awg-least";
import { conductorCarry } from "./carry";
import { conductorCarryShip } from "./carry-ship";
import { copperResistance } from "./copper-resistance";
import { conductorDrop } from "./drop";
import { conductorLeast } from "./least";
import { conductorResistanceOfRun } from "./resistance";
import { conductorWarm } from "./warm";
import { conductorWithstand } from "./withstand";

/** Conductors, battery, motor and what belongs to their supply and upkeep, in the order of the Supply page. */
export const conductor: readonly AnyDefinition[] = [
  conductorResistanceOfRun,
  conductorDrop,
  conductorLeast,
  copperResistance,
  awgArea,
  awgLeast,
  conductorCarry,
  conductorCarryShip,
  conductorWarm,
  conductorAdiabatic,
  conductorWithstand,
  batteryResistance,
  batteryBank,
  batteryRuntime,
  supplyFault,
  motorSpeedPm,
  motorSpeedSeries,
  fuseNext,
  lugPull,
  batteryAir,
  batteryOpening,
  oilHead,
  anodeHours,
];
