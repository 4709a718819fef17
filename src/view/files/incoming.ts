import { inBackground } from "../background";
import type { Desk } from "../desk";
import { chooseFile } from "./hand-out";

/** Takes a file that was chosen or dropped: a zip is a notebook, a table one of a trainee or of a page. */
async function takeFile(desk: Desk, file: File): Promise<void> {
  if (!desk.live) return;
  if (/\.zip$/i.test(file.name)) {
    const { openNotebook } = await import("./notebook-file");
    await openNotebook(desk, file);
  } else {
    const { openTraineeFile } = await import("../course/open-trainee-file");
    if (await openTraineeFile(desk, file)) return;
    const { openImport } = await import("../dialogs/import-page");
    await openImport(desk, file);
  }
}

export async function chooseNotebook(desk: Desk): Promise<void> {
  const file = await chooseFile(".zip,application/zip,.csv,text/csv");
  if (file) await takeFile(desk, file);
}

export async function chooseTable(desk: Desk): Promise<void> {
  const file = await chooseFile(".csv,.tsv,.txt,text/csv,text/tab-separated-values,text/plain");
  if (file) await takeFile(desk, file);
}

/** Files may be dropped anywhere on the page. */
export function listenToDrops(desk: Desk): void {
  const isFile = (event: DragEvent) => event.dataTransfer?.types.includes("Files") ?? false;
  document.addEventListener("dragover", (event) => {
    if (!isFile(event)) return;
    event.preventDefault();
    document.body.classList.add("dropping");
  });
  document.addEventListener("dragleave", (event) => {
    if (event.relatedTarget === null) document.body.classList.remove("dropping");
  });
  document.addEventListener("drop", (event) => {
    document.body.classList.remove("dropping");
    if (!isFile(event)) return;
    event.preventDefault();
    const file = event.dataTransfer?.files[0];
    if (file) inBackground(takeFile(desk, file));
  });
}
