import { inBackground } from "../background";
import type { Desk } from "../desk";
import type { Disk } from "./disk";

/** Saving to where the notebook belongs on the disk, or as a download where it has no place there. */
export function saving(desk: Desk): { readonly save: () => void; readonly load: () => Promise<Disk> } {
  let disk: Promise<Disk> | undefined;
  const load = () => {
    disk ??= import("./disk").then((found) => new found.Disk(desk));
    return disk;
  };
  const save = async () => {
    const place = await disk;
    if (place?.target !== undefined) await place.saveAgain();
    else (await import("./notebook-file")).saveNotebook(desk);
  };
  return { save: () => inBackground(save()), load };
}
