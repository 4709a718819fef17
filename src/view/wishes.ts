import type { Page } from "../notebook/model";
import { say } from "../words/say";
import { auditBeside } from "./audit-beside";
import { inBackground } from "./background";
import type { Desk } from "./desk";
import { calledHere } from "./edits/called-here";
import { pageDeedsOf } from "./edits/page-deeds";
import { exportPage } from "./files/hand-out-page";
import { chooseNotebook, chooseTable } from "./files/incoming";
import { saving } from "./files/saving";
import { cellMenu } from "./grid/cell-menu";
import type { Grid } from "./grid/grid";
import { openMenu } from "./grid/menu";
import type { Remedies } from "./keeping/alarms";
import type { Keeper } from "./keeping/keeper";
import { remediesOf } from "./keeping/remedies";
import type { Offline } from "./offline/offline";
import { type PageDeeds, pageMenu, toPageList } from "./panels/page-menu";
import type { Side } from "./side";

/** What the page's buttons and keys do; the larger parts behind them are fetched when they are first used. */
export interface Wishes {
  readonly options: () => void;
  readonly studies: () => void;
  readonly units: () => void;
  readonly language: () => void;
  readonly paper: () => void;
  /** Puts findings and ticks beside the cells, or takes them away. */
  readonly audit: () => void;
  /** Opens the named functions, at one of them where it is named. */
  readonly functions: (name?: string) => void;
  /** Ticks the selected cell, or its row, as reviewed. */
  readonly tick: (what: "cell" | "row") => void;
  /** Puts a function that the selected cell calls as rows in its place; the outermost when none is named. */
  readonly unfold: (name?: string) => void;
  /** Opens what can be done to the selected cells, at a place on the screen or beside the cell. */
  readonly menu: (x?: number, y?: number) => void;
  /** Opens what can be done with a page, at a place on the screen. */
  readonly pageMenu: (page: Page, x: number, y: number) => void;
  readonly pageDeeds: PageDeeds;
  readonly remedies: Remedies;
  readonly notebooks: () => void;
  readonly openNotebook: () => void;
  readonly saveNotebook: () => void;
  readonly importPage: () => void;
  readonly exportPage: (what: "typed" | "values") => void;
  /** Offers the page as a table for another program. */
  readonly exportFor: () => void;
  /** Puts the keyboard into the cells. */
  readonly toCells: () => void;
}

/** @param grid answers undefined until it is loaded. */
export function wishesOf(
  desk: Desk,
  grid: () => Grid | undefined,
  keeper: Keeper,
  side: Side,
  offline: Offline,
): Wishes {
  const options = () => inBackground(import("./dialogs/options").then(({ openOptions }) => openOptions(desk)));
  const units = () => inBackground(import("./dialogs/units").then(({ openUnits }) => openUnits(desk)));
  const language = () => inBackground(import("./dialogs/language").then(({ openLanguage }) => openLanguage(desk)));
  const paper = () => inBackground(import("./dialogs/paper").then(({ openPaper }) => openPaper(desk)));
  const studies = () => inBackground(import("./studies/studies").then(({ openStudies }) => openStudies(desk)));
  const toCells = () => grid()?.focus();
  const tick = (what: "cell" | "row") =>
    inBackground(import("./audit/ticks").then(({ tickSelected }) => tickSelected(desk, what)));
  const unfold = (name = calledHere(desk)[0]) =>
    inBackground(
      import("./edits/unfold-call").then(({ unfoldSelected }) => {
        // The button that asked for it goes with the call.
        if (unfoldSelected(desk, name)) toCells();
      }),
    );
  const { save: saveNotebook, load: loadDisk } = saving(desk);
  const notebooks = () =>
    inBackground(
      Promise.all([import("./dialogs/notebooks"), loadDisk()]).then(([{ openNotebooks }, disk]) =>
        openNotebooks(desk, keeper, disk),
      ),
    );
  const audit = auditBeside(desk, side, toCells);
  const pageDeeds = pageDeedsOf(desk);
  return {
    options,
    studies,
    units,
    language,
    paper,
    audit,
    tick,
    unfold,
    functions: (name) =>
      inBackground(import("./dialogs/functions").then(({ openFunctions }) => openFunctions(desk, toCells, name))),
    toCells,
    menu: (x, y) => {
      const box = grid()?.cellBox;
      const entries = cellMenu(desk, (by) => grid()?.widen(by), options, tick, unfold);
      openMenu(say`Rows and cells`, entries, x ?? box?.left ?? 0, y ?? box?.bottom ?? 0, toCells);
    },
    pageMenu: (page, x, y) => {
      if (desk.closed === undefined) {
        openMenu(say`Page ${page.name}`, pageMenu(desk, page, pageDeeds), x, y, toPageList);
      } else desk.say(desk.closed, "refused");
    },
    pageDeeds,
    remedies: remediesOf(desk, keeper, offline, { save: saveNotebook, notebooks }),
    notebooks,
    openNotebook: () => inBackground(chooseNotebook(desk)),
    saveNotebook,
    importPage: () => inBackground(chooseTable(desk)),
    exportPage: (what) => inBackground(exportPage(desk, what)),
    exportFor: () => inBackground(import("./dialogs/export-page").then(({ openExport }) => openExport(desk))),
  };
}
