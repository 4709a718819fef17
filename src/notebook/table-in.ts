import Papa from "papaparse";
import { say } from "../words/say";
import { checkSize, checkText, most } from "./limits";
import type { Row } from "./model";
import { Refusal } from "./refusal";

export const encodings = ["utf-8", "utf-16le", "windows-1252"] as const;
export const separators = [",", ";", "\t", "|"] as const;

/** How a table from another program is written. */
export interface TableShape {
  readonly encoding: (typeof encodings)[number];
  readonly separator: (typeof separators)[number];
  readonly decimal: "." | ",";
}

const decode = (bytes: Uint8Array, encoding: TableShape["encoding"], fatal: boolean): string =>
  new TextDecoder(encoding, { fatal }).decode(bytes);

function detectEncoding(bytes: Uint8Array): TableShape["encoding"] {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return "utf-16le";
  // Text in two bytes a character has a zero in every second place.
  const start = bytes.subarray(0, 400);
  const zeros = start.filter((byte, i) => i % 2 === 1 && byte === 0).length;
  if (start.length > 3 && zeros > start.length / 4) return "utf-16le";
  try {
    decode(bytes, "utf-8", true);
    return "utf-8";
  } catch {
    return "windows-1252";
  }
}

/** The separator that splits the first rows evenly and most often. */
function detectSeparator(text: string): TableShape["separator"] {
  const scores = separators.map((separator) => {
    const { data } = Papa.parse<string[]>(text, { delimiter: separator, preview: 20 });
    const widths = data.filter((row) => row.length > 1 || row[0] !== "").map((row) => row.length);
    const even = new Set(widths).size === 1;
    return { separator, score: (widths[0] ?? 1) > 1 ? (even ? 1000 : 0) + Math.min(...widths) : 0 };
  });
  return scores.reduce((best, one) => (one.score > best.score ? one : best)).separator;
}

/** A comma is the decimal sign when some cells can only be read so and none can only be read with a point. */
function detectDecimal(rows: readonly Row[]): TableShape["decimal"] {
  const cells = rows.flat();
  const comma = cells.filter((cell) => /^[+-]?\d+,(\d{1,2}|\d{4,})$/.test(cell.trim())).length;
  const point = cells.filter((cell) => /^[+-]?\d+\.\d+$/.test(cell.trim())).length;
  return comma > 0 && point === 0 ? "," : ".";
}

/** A first guess at how a file is written; the person sees it and may change every part. */
export function detectShape(bytes: Uint8Array): TableShape {
  const encoding = detectEncoding(bytes);
  const text = decode(bytes.subarray(0, 100_000), encoding, false);
  const separator = detectSeparator(text);
  const { data } = Papa.parse<string[]>(text, { delimiter: separator, preview: 200 });
  return { encoding, separator, decimal: detectDecimal(data) };
}

/**
 * Reads a table of any separator; every cell stays the text it was, short rows are filled with blanks.
 *
 * @throws Refusal with file and row for bytes of another encoding, an open quotation mark, or far too much.
 */
export function readTable(
  file: string,
  bytes: Uint8Array,
  shape: Pick<TableShape, "encoding" | "separator">,
): readonly Row[] {
  if (bytes.length > most.bytes) {
    throw new Refusal(say`${file} has ${bytes.length} bytes (allowed ${most.bytes}); it cannot be a page.`);
  }
  let text: string;
  try {
    text = decode(bytes, shape.encoding, true);
  } catch {
    throw new Refusal(say`${file} is not written in ${shape.encoding}; choose another encoding.`);
  }
  if (text.includes("\u0000")) throw new Refusal(say`${file} holds bytes that are no text; choose a CSV file.`);
  const { data, errors } = Papa.parse<string[]>(text, { delimiter: shape.separator });
  const fault = errors.find((error) => error.type === "Quotes");
  if (fault) {
    throw new Refusal(
      say`${file}, row ${(fault.row ?? 0) + 1}: a quotation mark is not closed or stands inside a cell.`,
    );
  }
  const last = data.at(-1);
  const rows = last?.length === 1 && last[0] === "" ? data.slice(0, -1) : data;
  if (rows.length === 0) throw new Refusal(say`${file} is empty.`);
  const width = rows.reduce((most, row) => Math.max(most, row.length), 0);
  checkSize(file, rows.length, width);
  return rows.map((row, r) =>
    Array.from({ length: width }, (_, i) => {
      const text = row[i] ?? "";
      checkText(() => say`${file}, row ${r + 1}, column ${i + 1}`, text);
      return text;
    }),
  );
}
