import { html, nothing, type TemplateResult } from "lit/html.js";
import type { Notebook } from "../../notebook/model";
import { unitChoice } from "../../notebook/unit-choice";
import { decimalSign } from "../../words/decimal-sign";
import { isolated, listed } from "../../words/isolated";
import { said, say } from "../../words/say";
import { unitText } from "../shown/unit-text";

/** `fuseRule` or `fuse_rule` -> `fuse rule`. */
const spoken = (name: string): string =>
  name
    .replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
    .replaceAll(/[_-]/g, " ")
    .trim();

/** With more settings than this the block goes on in further lines. */
const mostInLine = 6;

/** What a setting says; a group of settings is spelled out. */
function settingText(value: unknown): string {
  if (typeof value === "string" || typeof value === "number") return String(value);
  if (typeof value === "boolean") return value ? say`yes` : say`no`;
  if (Array.isArray(value)) return listed(value.map(settingText));
  if (value === null || typeof value !== "object") return "";
  return Object.entries(value)
    .map(([name, part]) => `${isolated(said(spoken(name)))} ${isolated(settingText(part))}`)
    .join(", ");
}

const cell = (name: string, text: string | undefined): TemplateResult | typeof nothing =>
  text ? html`<div><dt title=${name}>${name}</dt><dd title=${text}>${text}</dd></div>` : nothing;

/** Which units are shown in the place of the held ones. */
function unitsText(notebook: Notebook): string {
  const others = Object.values(unitChoice(notebook)).filter(
    (unit) => !["mm", "m", "N", "kg", "degC", "mm2"].includes(unit),
  );
  return others.length === 0 ? say`metric, as in each row` : say`metric, shown in ${others.map(unitText).join(", ")}`;
}

/** The block at the foot of a drawing: what job, which revision, by which rules. */
export function titleBlock(notebook: Notebook): TemplateResult {
  const { about } = notebook;
  // Units have a place of their own, how inputs spread stands in the studies; what is released is the trainer's to see.
  const { units: _, released: __, spread: ___, ...others } = about.settings ?? {};
  const settings = Object.entries(others).map(([name, value]) => cell(said(spoken(name)), settingText(value)));
  return html`<dl class="title-block ${settings.length > mostInLine ? "many" : ""}">
    ${cell(say`job`, about.title)} ${cell(say`revision`, about.revision)} ${cell(say`date`, about.date)}
    ${cell(say`units`, decimalSign() === "," ? say`${unitsText(notebook)}; decimal comma` : say`${unitsText(notebook)}; decimal point`)} ${settings}
    <div class="aid"><dt>${say`note`}</dt><dd>
      ${say`Planning aid. The boat's and the equipment's builder, class or national rules, local codes and licensed practice decide.`}
    </dd></div>
  </dl>`;
}
