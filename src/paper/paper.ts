import { escaped } from "../figures/draw/mark";
import type { LiveNotebook } from "../notebook/live";
import { optionsOf } from "../notebook/model";
import { Refusal } from "../notebook/refusal";
import { inSentence } from "../words/in-sentence";
import { spoken } from "../words/language";
import { say } from "../words/say";
import { customerEstimate } from "./customer-estimate";
import { handOverRecord } from "./hand-over-record";
import { jobSheet } from "./job-sheet";
import { type LayoutName, layoutTitles } from "./layout-names";
import { LinesAsked } from "./lines-asked";
import { box, says } from "./markup";
import { materialsList } from "./materials-list";
import { bodyStyle, pageStyle } from "./print-style";
import { serviceCard } from "./service-card";
import type { SheetSize } from "./sheet-size";
import { fullSize, templateStyle } from "./template-sheets";

const aid = say`Planning aid. The boat's and the equipment's builder, class or national rules, local codes and licensed practice decide.`;

function body(layout: LayoutName, asked: LinesAsked, size: SheetSize, margin: string): string {
  switch (layout) {
    case "job-sheet":
      return jobSheet(asked);
    case "materials":
      return materialsList(asked);
    case "estimate":
      return customerEstimate(asked);
    case "hand-over":
      return handOverRecord(asked);
    case "service":
      return serviceCard(asked);
    case "templates":
      return fullSize(asked, size, margin);
  }
}

/** Whether the notebook lets the work go on, in the words of its job sheet. */
function verdict(asked: LinesAsked): string {
  const go = asked.line("Job sheet.go");
  if (!go) return "";
  const isGo = go.value.kind === "text" && go.value.text.startsWith("go");
  return box("p", { class: isGo ? "go" : "stop", "data-key": "go" }, escaped(go.words || say`STOP: not worked out`));
}

/**
 * One layout of a notebook for one option, as a whole HTML document that loads nothing and runs nothing.
 *
 * Every sheet carries job, option, layout, revision, date and page number in its margins.
 *
 * @throws Refusal when there is no such option.
 */
export function paperOf(live: LiveNotebook, layout: LayoutName, option: string, size: SheetSize): string {
  const { about } = live.notebook;
  const options = optionsOf(live.notebook);
  if (!options.includes(option)) {
    throw new Refusal(say`There is no option "${option}" (there are ${options.join(", ") || say`none`}).`);
  }
  const title = layoutTitles[layout];
  const revision = say`revision ${about.revision || say`none`}`;
  const date = about.date || say`no date`;
  const margin = `${about.title}, ${option}, ${inSentence(title)}, ${revision}, ${date}`;
  const asked = new LinesAsked(live, option);
  const top = verdict(asked);
  const content = body(layout, asked, size, margin);
  const cell = (name: string, text: string) => box("div", {}, says("i", name), escaped(text));
  const page = pageStyle(size, {
    left: `${about.title}: ${option}`,
    right: `${title}, ${revision}, ${date}`,
    foot: aid,
  });
  const { missing } = asked;
  return `<!doctype html>
<html lang="${spoken().language}">
<head>
<meta charset="utf-8">
<title>${escaped(margin)}</title>
<style>
${page}
${bodyStyle}
${layout === "templates" ? templateStyle(size) : ""}
</style>
</head>
<body>
<h1>${title}</h1>
<div class="title">${cell(say`job`, about.title)}${cell(say`option`, option)}${cell(say`revision`, about.revision || say`none`)}${cell(say`date`, date)}</div>
${top}
${missing === undefined ? "" : says("p", missing, "stop")}
${says("p", say`${aid} Units are metric.`, "aid")}
${content}
</body>
</html>
`;
}
