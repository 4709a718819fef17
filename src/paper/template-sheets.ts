import { escaped } from "../figures/draw/mark";
import { offsetPageOf } from "../figures/offset-page";
import { papers } from "../figures/template/paper";
import type { Template } from "../figures/template/template";
import { templateSheets } from "../figures/template/template-sheets";
import { templatesOf } from "../figures/template/templates-of";
import { say } from "../words/say";
import type { LinesAsked } from "./lines-asked";
import { box, says } from "./markup";
import { caution, table, warned } from "./pieces";
import type { SheetSize } from "./sheet-size";

/** Strip below the drawing for the page's number, mm; within the rim that the drawing leaves. */
const foot = 8;

/** Pages of the paper's full size, upright and on their side; the drawing leaves the rim itself. */
export function templateStyle(size: SheetSize): string {
  const { width, height } = papers[size];
  const bare = ["top-left", "top-right", "bottom-left"].map((at) => `@${at} { content: none }`).join(" ");
  const number = "@bottom-right { padding: 0 11mm 0 0; width: 100% }";
  const rim = `margin: 0 0 ${foot}mm; ${bare} ${number}`;
  return `@page upright { size: ${width}mm ${height}mm; ${rim} }
@page lying { size: ${height}mm ${width}mm; ${rim} }
.template { position: relative; break-before: page; break-inside: avoid; overflow: hidden; line-height: 0 }
.template.upright { page: upright; width: ${width}mm; height: ${height - foot - 0.2}mm }
.template.lying { page: lying; width: ${height}mm; height: ${width - foot - 0.2}mm }
.template p { position: absolute; left: 116mm; right: 11mm; bottom: ${10.2 - foot}mm; margin: 0; max-height: 5.6mm; overflow: hidden; font-size: 6.5pt; line-height: 2.7mm }`;
}

function sheetsOf(template: Template, size: SheetSize, margin: string): string[] {
  return templateSheets(template, size).map((svg, i, all) => {
    const [, width = "0", height = "0"] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg) ?? [];
    const way = Number(width) > Number(height) ? "lying" : "upright";
    return box(
      "section",
      { class: `template ${way}` },
      svg,
      says("p", say`${margin}; planning aid; sheet ${i + 1} of ${all.length}`),
    );
  });
}

/**
 * Wrap templates and hole outlines at full size, port and starboard, behind one sheet that says how to use them.
 *
 * @param margin job, option, revision and date, for every sheet.
 */
export function fullSize(asked: LinesAsked, size: SheetSize, margin: string): string {
  const templates = templatesOf(asked.live, asked.option);
  if ("sentence" in templates) return says("p", templates.sentence);
  const list = templates.map((template) =>
    box(
      "tr",
      {},
      says("td", template.title),
      says("td", String(templateSheets(template, size).length), "number"),
      says("td", template.note),
    ),
  );
  const offsets = offsetPageOf(asked.live, asked.option);
  const dust = asked.line("Job sheet.caution_dust");
  const agree = asked.line("Job sheet.hold_tapes");
  return [
    says("h2", say`Before anything is marked`),
    box(
      "p",
      {},
      say`Print at 100 %, without fitting to the page. Measure the check bar on every sheet: 100 mm, or the sheet goes into the bin. `,
      say`Lay the sheets over one another by the crosses, tape them flat, measure across the joins.`,
    ),
    warned(
      say`cut once`,
      say`a template holds for the side of the hull that is named on it; offer it up, measure both holes from inside and outside, and cut nothing before the two agree.`,
    ),
    ...(dust ? [caution(dust)] : []),
    ...(agree ? [box("p", {}, says("b", agree.quantity), ` ${escaped(agree.words)}`)] : []),
    says("h2", say`Templates`),
    table([say`Template`, say`Sheets`, say`For`], list, [1]),
    offsets
      ? says(
          "p",
          say`The wrap templates follow the skin as measured on sheet "${offsets.name}". Half-lengths and trim table on the job sheet are those of a flat side: cut to the templates.`,
        )
      : "",
    ...templates.flatMap((template) => sheetsOf(template, size, margin)),
  ].join("\n");
}
