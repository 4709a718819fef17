import { type Page, pageById } from "../notebook/model";
import { pagePrefix } from "../notebook/references";
import { type Block, blockName } from "./block";
import type { Desk } from "./desk";

/** A formula that is being typed somewhere, into which clicks on cells put references. */
export interface Pointing {
  /** The page on which the formula stands. */
  readonly home: string;
  /** Whether its caret stands where a reference can go. */
  readonly takes: () => boolean;
  readonly put: (reference: string) => void;
}

let present: Pointing | undefined;

export function beginPointing(pointing: Pointing): void {
  present = pointing;
}

/** Ends it, unless another formula has begun meanwhile. */
export function endPointing(pointing: Pointing | undefined): void {
  if (present === pointing) present = undefined;
}

/** The formula that takes a reference now. */
export const pointingNow = (): Pointing | undefined => (present?.takes() ? present : undefined);

/** Puts the cells that were pointed at on the shown page into the formula, with the page's name where it is another. */
export function pointAt(desk: Desk, pointing: Pointing, page: Page, block: Block): void {
  const isHome = pageById(desk.notebook, pointing.home)?.id === page.id;
  pointing.put(`${isHome ? "" : pagePrefix(page.name)}${blockName(block)}`);
}
