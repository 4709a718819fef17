/** Hands a file to the person, as the browser does with downloads. */
export function handOut(name: string, content: string | Uint8Array, type: string): void {
  const blob = new Blob([content as BlobPart], { type });
  const link = document.createElement("a");
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}

/** A name that every file system takes. */
export const fileName = (title: string): string =>
  title
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/g, "") || "notebook";

/** Lets the person choose files; none when none is chosen. */
export function chooseFiles(accept: string, many: boolean): Promise<readonly File[]> {
  const input = document.createElement("input");
  input.type = "file";
  input.accept = accept;
  input.multiple = many;
  return new Promise((done) => {
    input.addEventListener("change", () => done([...(input.files ?? [])]));
    input.addEventListener("cancel", () => done([]));
    input.click();
  });
}

/** Lets the person choose a file; undefined when none is chosen. */
export const chooseFile = async (accept: string): Promise<File | undefined> => (await chooseFiles(accept, false))[0];
