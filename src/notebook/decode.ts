import { say } from "../words/say";
import { most } from "./limits";
import { Refusal } from "./refusal";

/** The line of the first byte that cannot be read as UTF-8. */
function badLine(bytes: Uint8Array): number {
  // Decoding the replacement way keeps line ends, so lines can be counted up to the first replaced character.
  const text = new TextDecoder("utf-8").decode(bytes);
  return text.slice(0, Math.max(0, text.indexOf("\uFFFD"))).split("\n").length;
}

/**
 * The text of a file of a notebook; a byte order mark is kept, so that an unchanged file keeps its bytes.
 *
 * @throws Refusal with file and row when the bytes are not UTF-8, or far too many.
 */
export function decodeFile(file: string, bytes: Uint8Array): string {
  if (bytes.length > most.bytes) {
    throw new Refusal(say`${file} has ${bytes.length} bytes (allowed ${most.bytes}); it cannot be a page.`);
  }
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new Refusal(say`${file}, row ${badLine(bytes)}: a character cannot be read; save the file as UTF-8 text.`);
  }
}
