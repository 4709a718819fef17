import type { AnyDefinition } from "../../formula/definition";
import { airDensityAt } from "./air-density";
import { windCoefficient } from "./coefficient";
import { currentCoefficient } from "./current-coefficient";
import { currentPush } from "./current-push";
import { currentShallow } from "./current-shallow";
import { windForce } from "./force";
import { windHeight } from "./height";
import { windLimit } from "./limit";
import { windPressure } from "./pressure";
import { windPush } from "./push";
import { windSpeedHeld } from "./speed";
import { waterDensity } from "./water-density";
import { waterViscosity } from "./water-viscosity";
import { windYaw } from "./yaw";

/** Wind, current, water, air. */
export const wind: readonly AnyDefinition[] = [
  windPressure,
  windPush,
  windSpeedHeld,
  windCoefficient,
  windHeight,
  windLimit,
  windForce,
  windYaw,
  currentPush,
  currentCoefficient,
  currentShallow,
  waterDensity,
  waterViscosity,
  airDensityAt,
];
