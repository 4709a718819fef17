import { spawnSync } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { isFormula } from "../../../src/engine/content";
import { type Notebook, type Position, pageById } from "../../../src/notebook/model";
import { parsePage } from "../../../src/notebook/page-csv";

/** Whether a desktop spreadsheet with a headless converter is installed here. */
export const hasHeadless = (): boolean => spawnSync("soffice", ["--version"]).status === 0;

const escaped = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");

function cell(text: string): string {
  if (text === "") return "<table:table-cell/>";
  if (isFormula(text)) return `<table:table-cell table:formula="msoxl:${escaped(text)}"/>`;
  const number = Number(text);
  if (text.trim() !== "" && Number.isFinite(number)) {
    return `<table:table-cell office:value-type="float" office:value="${number}"/>`;
  }
  const words = text.startsWith("'") ? text.slice(1) : text;
  return `<table:table-cell office:value-type="string"><text:p>${escaped(words)}</text:p></table:table-cell>`;
}

/** The workbook as one flat OpenDocument file, without any results: whoever opens it has to calculate. */
function flatSheet({ pages }: Notebook): string {
  const spaces = ["office", "table", "text"].map(
    (name) => `xmlns:${name}="urn:oasis:names:tc:opendocument:xmlns:${name}:1.0"`,
  );
  const tables = pages.map(
    ({ name, rows }) =>
      `<table:table table:name="${escaped(name)}">${rows
        .map((texts) => `<table:table-row>${texts.map(cell).join("")}</table:table-row>`)
        .join("")}</table:table>`,
  );
  return `<?xml version="1.0" encoding="UTF-8"?>
<office:document ${spaces.join(" ")} xmlns:msoxl="http://schemas.microsoft.com/office/excel/formula" office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet>${tables.join("")}</office:spreadsheet></office:body></office:document>
`;
}

/** All sheets as CSV files, full precision, formulas as their values. */
const asCsv = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1";

/** Converts a workbook in a folder of its own. @returns milliseconds of the whole run. */
export function convert(notebook: Notebook, folder: string): number {
  mkdirSync(folder, { recursive: true });
  const file = join(folder, "workbook.fods");
  writeFileSync(file, flatSheet(notebook));
  const profile = `-env:UserInstallation=file://${join(folder, "profile")}`;
  const began = performance.now();
  const run = spawnSync("soffice", [profile, "--headless", "--convert-to", asCsv, "--outdir", folder, file], {
    encoding: "utf8",
  });
  if (run.status !== 0) throw new Error(run.stderr);
  return performance.now() - began;
}

/** What a cell of a converted workbook shows. */
export function shownBy(notebook: Notebook, folder: string): (at: Position) => string {
  const pages = new Map<string, readonly (readonly string[])[]>();
  return ({ page, row, column }) => {
    if (!pages.has(page)) {
      const name = pageById(notebook, page)?.name ?? "";
      const file = readdirSync(folder).find((one) => one === `workbook-${name}.csv`);
      pages.set(page, file ? parsePage(file, readFileSync(join(folder, file), "utf8")) : []);
    }
    return pages.get(page)?.[row]?.[column] ?? "";
  };
}
