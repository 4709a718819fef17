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

/** Lets the person choose a file; undefined when none is chosen. */
export function chooseFile(accept: string): Promise<File | undefined> {
  const input = document.createElement("input");
  input.type = "file";
  input.accept = accept;
  return new Promise((done) => {
    input.addEventListener("change", () => done(input.files?.[0]));
    input.addEventListener("cancel", () => done(undefined));
    input.click();
  });
}
