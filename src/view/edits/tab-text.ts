/** Cells as text between tabs, the way table programs exchange them: quotes only where a cell needs them. */
export const printTabText = (rows: readonly (readonly string[])[]): string =>
  rows
    .map((row) => row.map((cell) => (/[\t\n\r"]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)).join("\t"))
    .join("\n");

/** Reads cells between tabs; a quoted cell may hold tabs and line ends. Short rows are filled up. */
export function readTabText(text: string): string[][] {
  const body = text.replace(/\r\n?/g, "\n").replace(/\n$/, "");
  const rows: string[][] = [[]];
  for (const [, quoted, plain = "", end] of body.matchAll(/(?:"((?:[^"]|"")*)"(?=\t|\n|$)|([^\t\n]*))(\t|\n|$)/g)) {
    rows.at(-1)?.push(quoted === undefined ? plain : quoted.replaceAll('""', '"'));
    if (end === "\n") rows.push([]);
    if (end === "") break;
  }
  const width = Math.max(...rows.map((row) => row.length));
  return rows.map((row) => [...row, ...Array.from({ length: width - row.length }, () => "")]);
}
