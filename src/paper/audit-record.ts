import type { AuditRecord } from "../audit/record";
import { escaped } from "../figures/draw/mark";
import { box, says } from "./markup";
import { signatures, table } from "./pieces";
import { bodyStyle, pageStyle } from "./print-style";
import type { SheetSize } from "./sheet-size";

/** The record of an audit as a whole HTML document that loads nothing and runs nothing. */
export function auditRecordSheets(record: AuditRecord, size: SheetSize): string {
  const { job, sum, note, parts, limits } = record;
  const revision = record.revision || "none";
  const date = record.date || "no date";
  const title = `${job}, audit record, revision ${revision}, ${date}`;
  const page = pageStyle(size, { left: job, right: `Audit record, revision ${revision}, ${date}`, foot: limits });
  const cell = (name: string, text: string) => box("div", {}, says("i", name), escaped(text));
  const row = (cells: readonly string[]) => box("tr", {}, ...cells.map((text) => says("td", text)));
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<title>${escaped(title)}</title>
<style>
${page}
${bodyStyle}
</style>
</head>
<body>
<h1>Audit record</h1>
<div class="title">${cell("job", job)}${cell("revision", revision)}${cell("date", date)}${cell("sum", sum)}</div>
${note === undefined ? "" : says("p", note, "stop")}
${parts
  .map(
    ({ title: heading, header, rows }) =>
      `${says("h2", heading)}\n${rows.length > 0 ? table(header, rows.map(row)) : says("p", "Nothing.")}`,
  )
  .join("\n")}
${signatures(["Audited by"])}
${says("p", limits, "aid")}
</body>
</html>
`;
}
