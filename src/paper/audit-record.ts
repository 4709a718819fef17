import type { AuditRecord } from "../audit/record";
import { escaped } from "../figures/draw/mark";
import { spoken } from "../words/language";
import { say } from "../words/say";
import { box, says } from "./markup";
import { signatures, table } from "./pieces";
import { bodyStyle, pageStyle } from "./print-style";
import type { SheetSize } from "./sheet-size";

/** The record of an audit as a whole HTML document that loads nothing and runs nothing. */
export function auditRecordSheets(record: AuditRecord, size: SheetSize): string {
  const { job, sum, note, parts, limits } = record;
  const revision = record.revision || say`none`;
  const date = record.date || say`no date`;
  const title = say`${job}, audit record, revision ${revision}, ${date}`;
  const page = pageStyle(size, { left: job, right: say`Audit record, revision ${revision}, ${date}`, foot: limits });
  const cell = (name: string, text: string) => box("div", {}, says("i", name), escaped(text));
  const row = (cells: readonly string[]) => box("tr", {}, ...cells.map((text) => says("td", text)));
  return `<!doctype html>
<html lang="${spoken().language}">
<head>
<meta charset="utf-8">
<title>${escaped(title)}</title>
<style>
${page}
${bodyStyle}
</style>
</head>
<body>
<h1>${say`Audit record`}</h1>
<div class="title">${cell(say`job`, job)}${cell(say`revision`, revision)}${cell(say`date`, date)}${cell(say`sum`, sum)}</div>
${note === undefined ? "" : says("p", note, "stop")}
${parts
  .map(
    ({ title: heading, header, rows }) =>
      `${says("h2", heading)}\n${rows.length > 0 ? table(header, rows.map(row)) : says("p", say`Nothing.`)}`,
  )
  .join("\n")}
${signatures([say`Audited by`])}
${says("p", limits, "aid")}
</body>
</html>
`;
}
