import { escaped } from "../figures/draw/mark";
import type { FigureName } from "../figures/kinds";
import { offsetPageOf } from "../figures/offset-page";
import { say } from "../words/say";
import type { Line } from "./line";
import type { LinesAsked } from "./lines-asked";
import { box, says } from "./markup";
import { caution, figures, hold, signatures, step, table } from "./pieces";
import { sectionsOf } from "./sections";

/** Figures that help at a part of the work, by the key of a row in it. */
const drawn: readonly (readonly [key: string, names: readonly FigureName[]])[] = [
  ["axis", ["hull section", "waterline view"]],
  ["scribe", ["hole square", "developed tube"]],
  ["bevel", ["joint plies", "ground outline"]],
  ["fuse", ["voltage budget", "fuse window"]],
];

const isSign = ({ key }: Line): boolean => key.startsWith("sign_");

const isCaution = ({ key, quantity }: Line): boolean => key.startsWith("caution_") || quantity.startsWith("CAUTION");

/** What the line is on the job sheet follows from the start of its key, or from the number before a step. */
function jobLine(line: Line): string {
  if (line.key.startsWith("hold_") || line.quantity.startsWith("HOLD")) return hold(line);
  if (isCaution(line)) return caution(line);
  if (/^\d+ /.test(line.quantity)) return step(line);
  return box("p", { "data-key": line.key }, says("b", `${line.quantity}:`), ` ${escaped(line.words)}`);
}

const keep = (...pieces: readonly string[]): string => box("div", { class: "keep" }, ...pieces);

/** The lines as they are printed; a caution stays on the page of the step or hold that it speaks of. */
function kept(lines: readonly Line[]): readonly string[] {
  const groups: Line[][] = [];
  let isOpen = false;
  for (const line of lines) {
    if (isOpen) groups.at(-1)?.push(line);
    else groups.push([line]);
    isOpen = isCaution(line);
  }
  return groups.map((group) => {
    const pieces = group.map(jobLine);
    return pieces.length > 1 ? keep(...pieces) : pieces.join("");
  });
}

const signRow = (line: Line): string =>
  box(
    "tr",
    { "data-key": line.key },
    says("td", line.quantity.replace(/^Sign: /, "")),
    says("td", line.words),
    box("td", { class: "pen" }),
    box("td", { class: "pen" }),
    box("td", { class: "pen" }),
  );

/** The order of work with the boat's numbers; holds and sign-off as boxes for a pen. */
export function jobSheet(asked: LinesAsked): string {
  const sections = sectionsOf(asked.page("Job sheet"));
  // The tube is cut to the offsets where somebody has measured them.
  const isCurved = offsetPageOf(asked.live, asked.option) !== undefined;
  const parts = sections.map(({ heading, lines }) => {
    const names = drawn
      .filter(([key]) => lines.some((line) => line.key === key))
      .map(([, list]) => (isCurved ? list.map((name) => (name === "developed tube" ? "cut lines" : name)) : list));
    const signs = lines.filter(isSign);
    // The verdict stands on top of the sheet already.
    const others = lines.filter((line) => !isSign(line) && line.key !== "go");
    const drawings = names.map((list) => figures(asked, list));
    const signed =
      signs.length === 0
        ? []
        : [
            table(
              [say`To be signed`, say`In the notebook`, say`Name`, say`Date`, say`Signature`],
              signs.map(signRow),
              [],
              "fixed signs",
            ),
          ];
    const [first = "", ...rest] = kept(others);
    const start = [says("h2", heading), ...drawings, ...signed];
    // A heading alone stays with what it heads; figures and tables keep to a page by themselves.
    return [...(start.length === 1 ? [keep(start.join(""), first)] : [...start, first]), ...rest].join("\n");
  });
  return [...parts, signatures([say`Foreman`, say`Second person`])].join("\n");
}
