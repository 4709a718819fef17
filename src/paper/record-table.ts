import { escaped } from "../figures/draw/mark";
import { say } from "../words/say";
import type { Line } from "./line";
import type { LinesAsked } from "./lines-asked";
import { box, says } from "./markup";
import { basis, caution, hold, step, table } from "./pieces";
import { sectionsOf } from "./sections";

/** What is read off the boat: an input that is still empty, or whose basis says so; limits and data sheets are not. */
const isReading = ({ kind, words, basis: from }: Line): boolean =>
  kind === "input" && (words === "" || /measured|record|kept/.test(from));

const row = (line: Line): string =>
  box(
    "tr",
    { "data-key": line.key, class: line.outcome?.kind === "short" ? "short" : undefined },
    box("td", {}, escaped(line.quantity), basis(line)),
    says("td", line.words || "\u2014"),
    isReading(line) ? box("td", { class: "pen" }) : says("td", ""),
  );

function sectionBody(lines: readonly Line[]): string {
  const isRow = (line: Line): boolean =>
    !(/^(caution|hold)_/.test(line.key) || /^(CAUTION|HOLD)/.test(line.quantity) || /^\d+ /.test(line.quantity));
  const rows = lines.filter(isRow);
  const others = lines.filter((line) => !isRow(line));
  const piece = (line: Line) => {
    if (line.quantity.startsWith("CAUTION") || line.key.startsWith("caution_")) return caution(line);
    return /^\d+ /.test(line.quantity) ? step(line) : hold(line);
  };
  return [
    ...others.map(piece),
    rows.length === 0
      ? ""
      : table([say`Quantity`, say`In the notebook`, say`Read, by pen`], rows.map(row), [], "fixed reads"),
  ].join("\n");
}

/**
 * A page of readings as a record: every row with what the notebook holds, and a box for what is read.
 *
 * @param cautions rows of other pages whose words stand above the part that holds the row with the given key.
 */
export function recordTables(
  asked: LinesAsked,
  page: string,
  cautions: readonly (readonly [key: string, address: string])[],
): string {
  return sectionsOf(asked.page(page))
    .map(({ heading, lines }) => {
      const beside = cautions.filter(([key]) => lines.some((line) => line.key === key)).map(([, address]) => address);
      const own = asked.lines(beside).map((line) => (line.key.startsWith("hold_") ? hold(line) : caution(line)));
      return [says("h2", heading), ...own, sectionBody(lines)].join("\n");
    })
    .join("\n");
}
