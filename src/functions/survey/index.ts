import type { AnyDefinition } from "../../formula/definition";
import { surveyAlong } from "./along";
import { surveyAway } from "./away";
import { shellBulge } from "./bulge";
import { shellRake } from "./rake";
import { surveySkew } from "./skew";
import { shellSlope } from "./slope";

/** Survey: points and angles measured on the hull. */
export const survey: readonly AnyDefinition[] = [
  surveyAlong,
  surveyAway,
  surveySkew,
  shellSlope,
  shellRake,
  shellBulge,
];
