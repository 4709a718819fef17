import type { Notebook } from "../notebook/model";
import { Tasks } from "./course/tasks";
import { Desk } from "./desk";
import { Clipboard } from "./edits/clipboard";
import { listenToDrops } from "./files/incoming";
import type { Grid } from "./grid/grid";
import { Keeper } from "./keeping/keeper";
import { listenToKeys } from "./keys";
import { Offline } from "./offline/offline";
import { CellLine } from "./panels/cell-line";
import { Drawings } from "./panels/drawing";
import { Notes } from "./panels/notes";
import { listenToPlace } from "./place";
import { Recovery } from "./recovery/recovery";
import { Shell } from "./shell";
import { Side } from "./side";
import type { KnownFunction } from "./typing/known-function";
import { wishesOf } from "./wishes";
import { workedNotebook } from "./worked-notebook";

const desk = new Desk(workedNotebook());
const keeper = new Keeper(desk);
const recovery = new Recovery(desk, () => keeper.flush());
recovery.begin();
const cells = document.createElement("div");
cells.className = "cells";
cells.id = "cells";

let grid: Grid | undefined;
let functions: (notebook: Notebook) => readonly KnownFunction[] = () => [];
const knownNow = () => functions(desk.notebook);
const side = new Side(() => shell.due());
const offline = new Offline(() => shell.due());
const wishes = wishesOf(desk, () => grid, keeper, side, offline);
const line = new CellLine(desk, knownNow, wishes.toCells);
const notes = new Notes(desk, () => shell.due());
const drawings = new Drawings(desk, () => shell.due());
const tasks = new Tasks(desk, () => shell.due());
const shell: Shell = new Shell(
  desk,
  document.querySelector("#desk") as HTMLElement,
  cells,
  { line, notes, drawings, tasks, side, offline },
  wishes,
);

/** The grid's first selection may have left the browser's place for Tab among the cells, before anybody was there. */
function startAtTheTop(): void {
  if (document.activeElement !== document.body) return;
  document.body.tabIndex = -1;
  document.body.focus({ preventScroll: true });
  document.body.blur();
  document.body.removeAttribute("tabindex");
}

window.addEventListener("beforeunload", (event) => {
  if (desk.isUnsaved) event.preventDefault();
});
listenToDrops(desk);
listenToKeys(desk, () => cells.contains(document.activeElement) && !grid?.isEditing, wishes);

// The page stands before the engine and the grid are there; both are fetched at once.
const [calculator, { Grid: GridView }, { listenToPrinting }] = await Promise.all([
  import("./calculator"),
  import("./grid/grid"),
  import("./grid/printed-page"),
  keeper.begin(),
  // Widths are measured with the page's own type.
  document.fonts.load('400 13px "IBM Plex Sans"'),
  document.fonts.load('600 13px "IBM Plex Sans"'),
  document.fonts.load('600 12px "IBM Plex Sans Condensed"'),
  document.fonts.load('400 12px "IBM Plex Mono"'),
]);
functions = calculator.knownFunctions;
try {
  desk.calculateWith(calculator.calculate);
} catch (problem) {
  // What was open last cannot be calculated: it is offered as a file, and another one is opened in its place.
  recovery.meet(problem, desk.notebook);
  desk.open(workedNotebook());
}
shell.workWith(
  calculator.working,
  new calculator.FeedGraph(desk, () => shell.due(), wishes.toCells),
  calculator.ownSide,
);
grid = new GridView(cells, desk, new Clipboard(desk), knownNow, wishes.menu);
// The cells have their height once the frame around them is drawn; only then can one of them be brought into sight.
await new Promise(requestAnimationFrame);
await new Promise(requestAnimationFrame);
startAtTheTop();
listenToPrinting(desk, cells);
listenToPlace(desk, wishes.toCells);
drawings.load();
document.documentElement.dataset.ready = "true";
// Storing the program waits until it works: it fetches every file of it.
if (import.meta.env.PROD) await offline.begin();
