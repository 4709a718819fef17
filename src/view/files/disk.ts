// Past 150 lines: one class is the place on the disk that the open notebook belongs to.

import { type Files, readNotebook, writeNotebook } from "../../notebook/files";
import { Refusal } from "../../notebook/refusal";
import { packNotebook } from "../../notebook/zip";
import { counted, say } from "../../words/say";
import type { Desk } from "../desk";
import { askOverwrite } from "../dialogs/ask-overwrite";
import { readFolder, readText, write, writeFolder } from "./folder";
import { fileName } from "./hand-out";
import { mayLeave } from "./notebook-file";
import { type Folder, pickFile, pickFolder } from "./pickers";

/** `files`: what the folder held of the notebook when it was read or written last. */
type Place =
  | { readonly kind: "folder"; readonly handle: Folder; readonly files: Files }
  | { readonly kind: "file"; readonly handle: FileSystemFileHandle };

/** Names of the files that a folder's notebook.json speaks of; none where there is none that can be read. */
function filesOf(files: Files): { readonly title: string; readonly names: readonly string[] } | undefined {
  try {
    const { about, pages } = readNotebook(files);
    return { title: about.title, names: pages.map(({ file }) => file) };
  } catch {
    return undefined;
  }
}

/** Folder or file on the disk that the open notebook was opened from or saved to, in browsers that can write there. */
export class Disk {
  private place: Place | undefined;
  private isOpening = false;

  constructor(private readonly desk: Desk) {
    desk.subscribe(({ kind }) => {
      if (kind === "opened" && !this.isOpening) this.place = undefined;
    });
  }

  /** Where saving goes; undefined where it is handed out as a download. */
  get target(): string | undefined {
    const { place } = this;
    if (!place) return undefined;
    const { name } = place.handle;
    return place.kind === "folder" ? say`the folder ${name}` : say`the file ${name}`;
  }

  /** Opens the notebook of a folder; one that cannot be read leaves the open notebook as it is. */
  async openFolder(): Promise<void> {
    const handle = await pickFolder();
    if (handle) await this.attempt(handle.name, () => this.openFrom(handle));
  }

  async saveToFolder(): Promise<void> {
    if (this.isBound()) return;
    const handle = await pickFolder();
    if (!handle) return;
    await this.attempt(handle.name, async () => {
      const there = await readFolder(handle);
      const other = filesOf(there);
      const isSame = this.place?.kind === "folder" && (await this.place.handle.isSameEntry(handle));
      const question =
        there.has("notebook.json") && !isSame
          ? other
            ? say`The folder ${handle.name} holds the notebook "${other.title}". Its files are replaced.`
            : say`The folder ${handle.name} holds a notebook that cannot be read. Its files are replaced.`
          : undefined;
      if (question === undefined || (await askOverwrite(question))) await this.writeTo(handle, other?.names ?? []);
    });
  }

  async saveToFile(): Promise<void> {
    if (this.isBound()) return;
    const handle = await pickFile(`${fileName(this.desk.notebook.about.title)}.zip`);
    if (handle) await this.attempt(handle.name, () => this.writeFile(handle));
  }

  /** Saves where the notebook was opened from or saved last. Asks where somebody else has changed files since. */
  async saveAgain(): Promise<void> {
    const { place } = this;
    if (!place || this.isBound()) return;
    await this.attempt(place.handle.name, async () => {
      if (place.kind === "file") {
        await this.writeFile(place.handle);
        return;
      }
      const changed: string[] = [];
      for (const [name, text] of place.files) if ((await readText(place.handle, name)) !== text) changed.push(name);
      const question = say`In the folder ${place.handle.name} somebody else has changed ${changed.join(", ")} since. Saving replaces that.`;
      if (changed.length === 0 || (await askOverwrite(question))) {
        await this.writeTo(place.handle, place.files.keys());
      }
    });
  }

  private async openFrom(handle: Folder): Promise<void> {
    const files = await readFolder(handle);
    const notebook = readNotebook(files);
    if (!(await mayLeave(this.desk, notebook.about.title))) return;
    this.isOpening = true;
    try {
      this.desk.open(notebook);
    } finally {
      this.isOpening = false;
    }
    this.place = { kind: "folder", handle, files: writeNotebook(notebook) };
    this.desk.say(say`${notebook.about.title} is open; Save writes to the folder ${handle.name}.`);
  }

  private async writeTo(handle: Folder, former: Iterable<string>): Promise<void> {
    const { desk } = this;
    const files = writeNotebook(desk.notebook);
    const { written, removed } = await writeFolder(handle, files, former);
    this.place = { kind: "folder", handle, files };
    desk.saved();
    const changed = say`Saved to the folder ${handle.name}: ${counted(written, "file")} of ${files.size} had changed.`;
    desk.say(removed > 0 ? `${changed} ${say`Taken away, of former pages: ${counted(removed, "file")}.`}` : changed);
  }

  private async writeFile(handle: FileSystemFileHandle): Promise<void> {
    await write(handle, packNotebook(this.desk.notebook));
    this.place = { kind: "file", handle };
    this.desk.saved();
    this.desk.say(say`Saved to ${handle.name}.`);
  }

  /** Whether the notebook may not be handed out for now; why not is said. */
  private isBound(): boolean {
    const bounds = this.desk.bounds();
    if (bounds) this.desk.say(bounds.save, "refused");
    return bounds !== undefined;
  }

  /** Says what could not be read or written; the open notebook is as it was. */
  private async attempt(name: string, what: () => Promise<void>): Promise<void> {
    try {
      await what();
    } catch (problem) {
      if (problem instanceof Refusal)
        this.desk.say(say`${name}: ${problem.message} The open notebook is unchanged.`, "refused");
      else if (problem instanceof DOMException)
        this.desk.say(
          say`${name} could not be read or written (${problem.message}): save to another place. The open notebook is unchanged.`,
          "refused",
        );
      else throw problem;
    }
  }
}
