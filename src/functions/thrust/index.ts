import type { AnyDefinition } from "../../formula/definition";
import { thrustHold } from "./hold";
import { thrustIdeal } from "./ideal";
import { jetSpeed } from "./jet-speed";
import { thrustMerit } from "./merit";
import { thrustPivot } from "./pivot";
import { thrustStatic } from "./static";
import { thrustTurn } from "./turn";

/** Side force of the thruster. */
export const thrust: readonly AnyDefinition[] = [
  thrustHold,
  thrustTurn,
  thrustPivot,
  thrustIdeal,
  thrustStatic,
  thrustMerit,
  jetSpeed,
];
