import type { Catalogue } from "../catalogue";
import { audit } from "./audit";
import { course } from "./course";
import { dialogs } from "./dialogs";
import { figures } from "./figures";
import { formulas } from "./formulas";
import { functions } from "./functions";
import { limits } from "./limits";
import { notebook } from "./notebook";
import { ownFunctions } from "./own-functions";
import { paper } from "./paper";
import { screen } from "./screen";
import { studies } from "./studies";
import { terminal } from "./terminal";
import { typing } from "./typing";
import { usage } from "./usage";

/** German, the formal way, in the words of the yard. */
export const german: Catalogue = {
  ...audit,
  ...course,
  ...dialogs,
  ...figures,
  ...formulas,
  ...functions,
  ...limits,
  ...notebook,
  ...ownFunctions,
  ...paper,
  ...screen,
  ...studies,
  ...terminal,
  ...typing,
  ...usage,
};
