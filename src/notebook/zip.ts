import { strToU8, unzipSync, zipSync } from "fflate";
import { say } from "../words/say";
import { decodeFile } from "./decode";
import { type Files, readNotebook, writeNotebook } from "./files";
import { most } from "./limits";
import type { Notebook } from "./model";
import { Refusal } from "./refusal";

const plainName = /^[^/\\:\0]+$/;

/** Text files by name as one zip. */
export const packFiles = (files: Files): Uint8Array =>
  zipSync(Object.fromEntries([...files].map(([name, text]) => [name, strToU8(text)] as const)), { level: 6 });

/** A notebook as one zip of its files. */
export const packNotebook = (notebook: Notebook): Uint8Array => packFiles(writeNotebook(notebook));

/** Files at the top of the zip, or in the one folder that holds everything. */
function withoutFolder(names: readonly string[]): (name: string) => string {
  const folder = names[0]?.split("/")[0] ?? "";
  const all = names.every((name) => name.startsWith(`${folder}/`));
  return (name) => (all ? name.slice(folder.length + 1) : name);
}

/**
 * Opens a zip of a notebook's files.
 *
 * @throws Refusal for damaged bytes, names with folders in them, or sizes that no notebook has; sizes are judged
 * before anything is unpacked.
 */
export function unpackNotebook(bytes: Uint8Array): Notebook {
  let total = 0;
  const names: string[] = [];
  const read = () =>
    unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        if (name.endsWith("/")) return false;
        total += originalSize;
        names.push(name);
        if (names.length > most.files || total > most.bytes) {
          throw new Refusal(
            say`The zip holds more than ${most.files} files or ${most.bytes} bytes; it cannot be a notebook.`,
          );
        }
        return true;
      },
    });
  let unzipped: ReturnType<typeof unzipSync>;
  try {
    unzipped = read();
  } catch (cause) {
    if (cause instanceof Refusal) throw cause;
    throw new Refusal(say`The file is not a zip that can be read; it may be damaged or of another kind.`);
  }
  const strip = withoutFolder(names);
  const files: Files = new Map(
    Object.entries(unzipped).map(([name, content]) => {
      const plain = strip(name);
      if (!plainName.test(plain) || plain.startsWith("..")) {
        throw new Refusal(say`The zip holds "${name}"; a notebook's files lie in one folder, with plain names.`);
      }
      return [plain, decodeFile(plain, content)];
    }),
  );
  return readNotebook(files);
}
