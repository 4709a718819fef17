import type { Catalogue } from "../catalogue";
import { audit } from "./audit";
import { course } from "./course";
import { dialogs } from "./dialogs";
import { functions } from "./functions";
import { keeping } from "./keeping";
import { notebook } from "./notebook";
import { screen } from "./screen";
import { studies } from "./studies";
import { terminal } from "./terminal";
import { typing } from "./typing";

/** German, the formal way, in the words of the yard. */
export const german: Catalogue = {
  ...audit,
  ...course,
  ...dialogs,
  ...functions,
  ...keeping,
  ...notebook,
  ...screen,
  ...studies,
  ...terminal,
  ...typing,
};
