import type { Catalogue } from "../catalogue";

/** The frame of the screen. */
export const screen: Catalogue = {};
