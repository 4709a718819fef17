import { mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Output } from "../../src/cli/output";
import { sampleFiles } from "../notebook/sample";

/** A terminal that keeps what is written to it. */
export function terminal(input = ""): Output & { readonly text: () => string } {
  const written: string[] = [];
  return {
    write: (text) => {
      written.push(text);
    },
    path: (typed) => typed,
    input: async () => input,
    text: () => written.join(""),
  };
}

/** A folder with the sample notebook, changed where asked. */
export function sampleFolder(changes: Readonly<Record<string, string>> = {}): string {
  const folder = join(mkdtempSync(join(tmpdir(), "athwart-")), "sample");
  mkdirSync(folder);
  for (const [name, text] of new Map([...sampleFiles, ...Object.entries(changes)])) {
    writeFileSync(join(folder, name), text);
  }
  return folder;
}
