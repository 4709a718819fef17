import { decodeFile } from "../../notebook/decode";
import type { Files } from "../../notebook/files";
import { Refusal } from "../../notebook/refusal";
import { say } from "../../words/say";
import type { Folder } from "./pickers";

const mostFiles = 500;
const ours = /\.csv$|^notebook\.json$/i;

/** A file's text; undefined when it is not there. */
export async function readText(folder: Folder, name: string): Promise<string | undefined> {
  try {
    const file = await (await folder.getFileHandle(name)).getFile();
    return decodeFile(name, new Uint8Array(await file.arrayBuffer()));
  } catch (cause) {
    if (cause instanceof DOMException && cause.name === "NotFoundError") return undefined;
    throw cause;
  }
}

/** The files of a folder that can belong to a notebook. @throws Refusal when there are far too many or one is no text. */
export async function readFolder(folder: Folder): Promise<Files> {
  const names: string[] = [];
  for await (const { kind, name } of folder.values()) if (kind === "file" && ours.test(name)) names.push(name);
  if (names.length > mostFiles) {
    throw new Refusal(
      say`The folder holds ${names.length} tables (allowed ${mostFiles}); choose the folder of one notebook.`,
    );
  }
  const texts = await Promise.all(names.map(async (name) => [name, (await readText(folder, name)) ?? ""] as const));
  return new Map(texts);
}

/** Writes bytes so that the file holds either all of them or what it held before. */
export async function write(handle: FileSystemFileHandle, content: string | Uint8Array): Promise<void> {
  const stream = await handle.createWritable();
  await stream.write(content as FileSystemWriteChunkType);
  await stream.close();
}

/**
 * Makes the folder hold these files: writes those that differ and takes away those that are a notebook's no longer.
 * Whatever else lies there is left alone.
 *
 * @param former names of the files that the notebook had there before.
 * @returns how many were written, and how many taken away.
 */
export async function writeFolder(
  folder: Folder,
  files: Files,
  former: Iterable<string>,
): Promise<{ readonly written: number; readonly removed: number }> {
  let written = 0;
  for (const [name, text] of files) {
    if ((await readText(folder, name)) === text) continue;
    await write(await folder.getFileHandle(name, { create: true }), text);
    written++;
  }
  const gone = [...former].filter((name) => !files.has(name));
  for (const name of gone) await folder.removeEntry(name).catch(() => undefined);
  return { written, removed: gone.length };
}
