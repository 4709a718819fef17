import type { History } from "../notebook/history";
import { LiveNotebook } from "../notebook/live";
import type { Notebook } from "../notebook/model";

// Everything that needs the engine or the named functions, loaded together after the page is on the screen.
export { FeedGraph } from "./feeds/feed-graph";
export { ownSide } from "./functions/own-side";
export { working } from "./panels/working";
export { knownFunctions } from "./typing/named-functions";

export const calculate = (notebook: Notebook, history?: History): LiveNotebook => new LiveNotebook(notebook, history);
