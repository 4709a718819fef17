import { html, nothing, type TemplateResult } from "lit/html.js";
import type { Template } from "../../figures/template/template";
import { templateDxf } from "../../figures/template/template-dxf";
import { templateSvg } from "../../figures/template/template-svg";
import { templatesOf } from "../../figures/template/templates-of";
import { optionsOf } from "../../notebook/model";
import { type LayoutName, layoutNames, layoutTitles } from "../../paper/layout-names";
import { paperOf } from "../../paper/paper";
import { type SheetSize, sizesOf } from "../../paper/sheet-size";
import { say } from "../../words/say";
import { inBackground } from "../background";
import type { Desk } from "../desk";
import { fileName, handOut } from "../files/hand-out";
import { printDocument } from "../files/print-document";
import { openDialog } from "./dialog";

interface Choice {
  layout: LayoutName;
  option: string;
  size: SheetSize;
}

const choose = <T extends string>(
  label: string,
  among: readonly T[],
  chosen: T,
  name: (one: T) => string,
  take: (one: T) => void,
): TemplateResult => html`<label>${label}
  <select @change=${(event: Event) => take(among[(event.target as HTMLSelectElement).selectedIndex] ?? chosen)}>
    ${among.map((one) => html`<option ?selected=${one === chosen}>${name(one)}</option>`)}
  </select>
</label>`;

/** Each template as a drawing of its own size, for a plotter or a cutter. */
function drawings(desk: Desk, option: string): TemplateResult | typeof nothing {
  if (!desk.live) return nothing;
  const templates = templatesOf(desk.live, option);
  if ("sentence" in templates) return html`<p>${templates.sentence}</p>`;
  const save = (template: Template, kind: "svg" | "dxf") => {
    const name = `${fileName(`${template.title} ${option}`)}.${kind}`;
    if (kind === "svg") handOut(name, templateSvg(template), "image/svg+xml");
    else handOut(name, templateDxf(template), "image/vnd.dxf");
    desk.say(say`${template.title} saved as ${name}, in millimetres.`);
  };
  return html`<h3>${say`As drawings in one piece, in millimetres`}</h3>
    ${templates.map(
      (template) => html`<div class="choices"><span>${template.title}</span>
        <button type="button" aria-label=${say`Save SVG: ${template.title}`} @click=${() => save(template, "svg")}>${say`Save SVG`}</button>
        <button type="button" aria-label=${say`Save DXF: ${template.title}`} @click=${() => save(template, "dxf")}>${say`Save DXF`}</button>
      </div>`,
    )}`;
}

/** Chooses a layout, an option and a paper; prints the sheets or saves them. */
export function openPaper(desk: Desk): Promise<void> {
  const options = optionsOf(desk.notebook);
  const choice: Choice = { layout: "job-sheet", option: options[0] ?? "", size: "A4" };
  return openDialog(say`Sheets on paper`, ({ update, close }) => {
    const { layout, option, size } = choice;
    const take = (change: Partial<Choice>) => {
      Object.assign(choice, change);
      update();
    };
    const text = () => desk.attempt(() => desk.live && paperOf(desk.live, layout, option, size));
    const print = () => {
      const sheets = text();
      if (sheets !== undefined) inBackground(printDocument(sheets));
    };
    const save = () => {
      const sheets = text();
      if (sheets === undefined) return;
      const name = `${layout}-${fileName(option)}.html`;
      handOut(name, sheets, "text/html;charset=utf-8");
      desk.say(say`${layoutTitles[layout]} for ${option} saved as ${name}.`);
    };
    if (options.length === 0) {
      return html`<p>${say`This notebook has no page with options, so there is nothing to lay out on paper.`}</p>
        <div class="choices"><button type="button" class="main" @click=${close}>${say`Close`}</button></div>`;
    }
    return html`<div class="units">
        ${choose(
          say`Layout`,
          layoutNames,
          layout,
          (one) => layoutTitles[one],
          (one) => take({ layout: one, size: sizesOf(one).find((size) => size === choice.size) ?? "A4" }),
        )}
        ${choose(
          say`Option`,
          options,
          option,
          (one) => one,
          (one) => take({ option: one }),
        )}
        ${choose(
          say`Paper`,
          sizesOf(layout),
          size,
          (one) => one,
          (one) => take({ size: one }),
        )}
      </div>
      <p class="soft">${
        layout === "templates"
          ? say`Print at 100 %, without fitting to the page, and measure the check bar on every sheet: 100 mm.`
          : say`The sheets hold the numbers as they stand now; print them again after a change.`
      }</p>
      ${layout === "templates" ? drawings(desk, option) : nothing}
      <div class="choices">
        <button type="button" class="main" @click=${print}>${say`Print`}</button>
        <button type="button" @click=${save}>${say`Save as HTML`}</button>
        <button type="button" @click=${close}>${say`Close`}</button>
      </div>`;
  });
}
