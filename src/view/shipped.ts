import { readNotebook } from "../notebook/files";
import type { Notebook } from "../notebook/model";

const files = import.meta.glob<string>(
  ["../../sheets/three-hulls/*", "../../sheets/one-hull-three-layouts/*", "../../sheets/course/*"],
  {
    query: "?raw",
    import: "default",
  },
);

/** The worked notebooks that come with the program, to start from. */
export const shipped = [
  { folder: "three-hulls", title: "Three hulls at Tern Quay" },
  { folder: "one-hull-three-layouts", title: "One hull, three layouts" },
  { folder: "course", title: "Course at Tern Quay" },
] as const;

/** A worked notebook as it was shipped. */
export async function shippedNotebook(folder: string): Promise<Notebook> {
  const wanted = Object.entries(files).filter(([path]) => path.split("/").at(-2) === folder);
  const texts = await Promise.all(
    wanted.map(async ([path, load]) => [path.split("/").at(-1) ?? path, await load()] as const),
  );
  return readNotebook(new Map(texts));
}
