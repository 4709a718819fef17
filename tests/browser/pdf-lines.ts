import { inflateSync } from "node:zlib";

/** A straight line of a PDF page, in mm from the page's lower left corner. */
export interface PdfLine {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

const mmPerPoint = 25.4 / 72;
type Matrix = readonly [number, number, number, number, number, number];

/** First `inner`, then `outer`. */
const joined = ([a, b, c, d, e, f]: Matrix, [A, B, C, D, E, F]: Matrix): Matrix => [
  a * A + b * C,
  a * B + b * D,
  c * A + d * C,
  c * B + d * D,
  e * A + f * C + E,
  e * B + f * D + F,
];

function contents(pdf: Uint8Array): string[] {
  const raw = Buffer.from(pdf).toString("latin1");
  return [...raw.matchAll(/stream\r?\n/g)].flatMap((found) => {
    const start = found.index + found[0].length;
    try {
      return [inflateSync(pdf.subarray(start, raw.indexOf("endstream", start))).toString("latin1")];
    } catch {
      // Fonts and pictures are packed otherwise.
      return [];
    }
  });
}

/** The straight lines that a PDF draws, page after page, as they come to lie on paper. */
export function pdfLines(pdf: Uint8Array): PdfLine[] {
  const lines: PdfLine[] = [];
  for (const content of contents(pdf)) {
    let matrix: Matrix = [mmPerPoint, 0, 0, mmPerPoint, 0, 0];
    const kept: Matrix[] = [];
    let at: readonly [number, number] = [0, 0];
    const place = (x: number, y: number): readonly [number, number] => [
      x * matrix[0] + y * matrix[2] + matrix[4],
      x * matrix[1] + y * matrix[3] + matrix[5],
    ];
    for (const row of content.split("\n")) {
      const words = row.trim().split(/\s+/);
      const sign = words.at(-1);
      const numbers = words.slice(0, -1).map(Number);
      if (sign === "q") kept.push(matrix);
      else if (sign === "Q") matrix = kept.pop() ?? matrix;
      else if (sign === "cm" && numbers.length === 6) matrix = joined(numbers as unknown as Matrix, matrix);
      else if (sign === "m" && numbers.length === 2) at = place(numbers[0] ?? 0, numbers[1] ?? 0);
      else if (sign === "l" && numbers.length === 2) {
        const to = place(numbers[0] ?? 0, numbers[1] ?? 0);
        lines.push({ from: at, to });
        at = to;
      }
    }
  }
  return lines;
}
