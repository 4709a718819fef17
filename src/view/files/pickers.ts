import { say } from "../../words/say";

/** A folder that the person has chosen. */
export type Folder = FileSystemDirectoryHandle;

/** The part of the File System Access standard that the page's types do not know. */
interface Pickers {
  readonly showDirectoryPicker: (options: { readonly id: string; readonly mode: "readwrite" }) => Promise<Folder>;
  readonly showSaveFilePicker: (options: {
    readonly suggestedName: string;
    readonly types: readonly { readonly description: string; readonly accept: Readonly<Record<string, string[]>> }[];
  }) => Promise<FileSystemFileHandle>;
}

const pickers = (): Partial<Pickers> => window as Partial<Pickers>;

/** Whether this browser can write to folders and files that a person chooses. */
export const canPick = (): boolean => "showDirectoryPicker" in window && "showSaveFilePicker" in window;

/** Undefined when the person chose none. */
async function chosen<T>(choice: Promise<T> | undefined): Promise<T | undefined> {
  try {
    return await choice;
  } catch (cause) {
    if (cause instanceof DOMException && cause.name === "AbortError") return undefined;
    throw cause;
  }
}

export const pickFolder = (): Promise<Folder | undefined> =>
  chosen(pickers().showDirectoryPicker?.({ id: "notebooks", mode: "readwrite" }));

export const pickFile = (suggestedName: string): Promise<FileSystemFileHandle | undefined> =>
  chosen(
    pickers().showSaveFilePicker?.({
      suggestedName,
      types: [{ description: say`Notebook`, accept: { "application/zip": [".zip"] } }],
    }),
  );
