import { readNotebook } from "../notebook/files";
import type { Notebook } from "../notebook/model";

const files = import.meta.glob<string>("../../sheets/three-hulls/*.{json,csv}", {
  query: "?raw",
  import: "default",
  eager: true,
});

/** The worked notebook that the page opens with. */
export const workedNotebook = (): Notebook =>
  readNotebook(new Map(Object.entries(files).map(([path, text]) => [path.split("/").at(-1) ?? path, text])));
