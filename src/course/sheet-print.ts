import { spoken } from "../words/language";
import type { Block } from "./sheet";

const width = 92;

/** A paragraph in lines of paper width; what is longer than a line in one word stays whole. */
function wrapped(text: string, indent = ""): string {
  const lines: string[] = [];
  let line = indent;
  for (const word of text.split(" ")) {
    if (line.length > indent.length && line.length + word.length + 1 > width) {
      lines.push(line);
      line = indent;
    }
    line += line.length > indent.length ? ` ${word}` : word;
  }
  return [...lines, line].join("\n");
}

function tableText(header: readonly string[], rows: readonly (readonly string[])[]): string {
  const all = [header, ...rows];
  const last = header.length - 1;
  const widths = header.map((_, i) => Math.min(60, Math.max(...all.map((row) => (row[i] ?? "").length))));
  const line = (row: readonly string[]) =>
    row.map((cell, i) => (i === last ? cell : cell.padEnd(widths[i] ?? 0))).join("  ");
  return [line(header), line(widths.map((many) => "-".repeat(many))), ...rows.map(line)].join("\n");
}

function blockText(block: Block): string {
  switch (block.kind) {
    case "title":
      return `${block.text}\n${"=".repeat(block.text.length)}`;
    case "heading":
      return `${block.text}\n${"-".repeat(block.text.length)}`;
    case "text":
    case "step":
      return wrapped(block.text);
    case "list":
      return block.items.map((item, i) => wrapped(`${i + 1}. ${item}`, "  ")).join("\n");
    case "table":
      return tableText(block.header, block.rows);
  }
}

/** A sheet as plain text for a terminal or a printer. */
export const sheetText = (blocks: readonly Block[]): string => `${blocks.map(blockText).join("\n\n")}\n`;

const signs: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" };
const safe = (text: string): string => text.replace(/[&<>"']/g, (sign) => signs[sign] as string);

const tags = { title: "h1", heading: "h2", text: "p", step: "p" } as const;

function blockHtml(block: Block): string {
  if (block.kind === "list") return `<ol>${block.items.map((item) => `<li>${safe(item)}</li>`).join("")}</ol>`;
  if (block.kind !== "table") return `<${tags[block.kind]}>${safe(block.text)}</${tags[block.kind]}>`;
  const cells = (row: readonly string[], tag: "th" | "td") =>
    `<tr>${row.map((cell) => `<${tag}${tag === "th" ? ' scope="col"' : ""}>${safe(cell)}</${tag}>`).join("")}</tr>`;
  return `<table><thead>${cells(block.header, "th")}</thead><tbody>${block.rows.map((row) => cells(row, "td")).join("")}</tbody></table>`;
}

const style = `@page { size: A4; margin: 18mm }
body { font: 11pt/1.45 "IBM Plex Sans", sans-serif; max-width: 46em; margin: 2em auto; padding: 0 1em; color: #111; background: #fff }
h1 { font-size: 1.4em } h2 { font-size: 1em; border-bottom: 1px solid; margin-top: 1.6em; break-after: avoid }
table { border-collapse: collapse; width: 100%; margin: 1em 0; font-variant-numeric: tabular-nums; break-inside: avoid }
th, td { text-align: left; vertical-align: top; padding: .25em .8em .25em 0; border-bottom: 1px solid #999 }
section + section { break-before: page }`;

/**
 * Sheets as one HTML page that prints one sheet after the other; it loads nothing and runs nothing.
 *
 * @param sheets each begins on a page of its own.
 */
export function sheetsHtml(title: string, sheets: readonly (readonly Block[])[]): string {
  const body = sheets.map((blocks) => `<section>\n${blocks.map(blockHtml).join("\n")}\n</section>`).join("\n");
  return `<!doctype html>\n<html lang="${spoken().language}">\n<head>\n<meta charset="utf-8">\n<title>${safe(title)}</title>\n<style>\n${style}\n</style>\n</head>\n<body>\n${body}\n</body>\n</html>\n`;
}
