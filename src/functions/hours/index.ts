import type { AnyDefinition } from "../../formula/definition";
import { hoursAt } from "./at";
import { hoursJoin } from "./join";
import { hoursMean } from "./mean";
import { priceMargin } from "./price-margin";
import { priceMarkup } from "./price-markup";
import { hoursSpread } from "./spread";

/** Hours and price, in the order of an estimate. */
export const hours: readonly AnyDefinition[] = [hoursMean, hoursSpread, hoursAt, hoursJoin, priceMargin, priceMarkup];
