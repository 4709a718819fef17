import { html, nothing, type TemplateResult } from "lit/html.js";
import type { LiveNotebook } from "../../notebook/live";
import { type Page, type Position, pageById } from "../../notebook/model";
import { formulaAsTyped } from "../../notebook/typed-formula";
import { type NamedValue, type Working, workingOf } from "../../notebook/working";
import { listed } from "../../words/isolated";
import { counted, say } from "../../words/say";
import type { Cell } from "../block";
import { cornerMark, openMark } from "../marks";
import { rowDecimals } from "../shown/row-decimals";
import { asHeld, rowUnits } from "../shown/row-units";
import { startOf } from "../shown/start-of";
import { isMargin } from "../shown/unit-text";
import { worthText } from "../shown/value-text";
import { callSteps } from "./call-steps";
import { cellLink } from "./cell-link";
import { whenOpen } from "./when-open";

/** More cells than this are folded away. */
const mostOpen = 8;

function worth(live: LiveNotebook, { at, value, unit }: NamedValue): string {
  if (value.kind === "error") return say`no value`;
  const page = pageById(live.notebook, at.page);
  if (!page) return worthText(value, asHeld(unit));
  return worthText(value, rowUnits(live.notebook, page, at.row), rowDecimals(live, page, at.row));
}

/** Cells that feed or are fed, each leading to its place. */
function cells(
  title: string,
  home: NamedValue,
  list: readonly NamedValue[],
  live: LiveNotebook,
  go: (at: Position) => void,
  isDrawn: boolean,
): TemplateResult | typeof nothing {
  if (list.length === 0) return nothing;
  const name = (one: NamedValue) =>
    [
      one.page === home.page ? "" : `${one.page}:`,
      startOf(one.quantity) || one.cell.replace(/^.*!/, ""),
      one.option && one.option !== home.option ? `(${one.option})` : "",
    ]
      .filter(Boolean)
      .join(" ");
  const item = (one: NamedValue) =>
    html`<li>${cellLink(one.page, one.at, name(one), () => go(one.at))} <span class="soft">${worth(live, one)}</span></li>`;
  return html`<details ?open=${!isDrawn && list.length <= mostOpen}>
    <summary>${title} ${counted(list.length, "cell")}${isDrawn ? say`, as a list` : ""}</summary>
    <ul ${whenOpen(() => html`${list.map(item)}`)}></ul>
  </details>`;
}

function formula({ formula: written, text }: Working): TemplateResult | typeof nothing {
  if (!written) return nothing;
  return html`<p class="formula">${startOf(formulaAsTyped(text))}</p>
    ${written.names ? html`<p class="read">${startOf(written.names)}</p>` : nothing}
    ${written.numbers ? html`<p class="read soft">${startOf(written.numbers)}</p>` : nothing}`;
}

/** Inputs behind a result that lie outside what is plausible for them. */
function implausible({ parts }: Working): TemplateResult | typeof nothing {
  const outside = parts
    .filter(({ plausible }) => plausible === false)
    .map(({ quantity, cell }) => startOf(quantity) || cell);
  return outside.length > 0
    ? html`<p class="open">${openMark} ${say`Outside what is plausible: ${listed(outside)}.`}</p>`
    : nothing;
}

/** What may stand in a working beside what the cell itself says. */
export interface WorkingParts {
  /** What feeds the cell and what it feeds, as a drawing. */
  readonly graph?: TemplateResult | undefined;
  /** Looks a named function up. */
  readonly about?: (name: string) => void;
  /** Puts a named function as rows in its place. */
  readonly unfold?: (name: string) => void;
}

/** How the selected cell's value comes about: its formula in addresses, words and numbers, its named functions step by step. */
export function working(
  live: LiveNotebook,
  page: Page,
  cell: Cell,
  go: (at: Position) => void,
  beside: WorkingParts = {},
): TemplateResult | typeof nothing {
  const one = workingOf(live, { page: page.id, ...cell });
  if (!one) return nothing;
  const { value, option, kind, note } = one;
  const [quantity, basis] = [startOf(one.quantity), startOf(one.basis)];
  const what = option ? `${quantity}, ${option}` : one.cell.replace(/^.*!/, "");
  const isDrawn = beside.graph !== undefined;
  const state =
    value.kind === "blank"
      ? say` is empty`
      : value.kind === "error"
        ? say` has no value`
        : html`${value.kind === "number" && isMargin(one.unit) ? ": " : " = "}<b>${worth(live, one)}</b>`;
  return html`<div class="working">
    <p class="sum"><b>${what}</b>${state}</p>
    ${value.kind === "error" ? html`<p class="short">${cornerMark} ${value.sentence}${value.from ? html` ${say`(from ${value.from})`}` : nothing}</p>` : nothing}
    ${formula(one)}
    ${option && basis ? html`<p class="why">${say`${kind === "input" ? say`typed in; ` : ""}basis: ${basis}`}</p>` : nothing}
    ${implausible(one)}
    ${note ? html`<p class="why">${note}</p>` : nothing}
    ${beside.graph ?? nothing}
    ${one.calls.map((call) => callSteps(call, beside.about, option ? beside.unfold : undefined))}
    ${cells(say`Fed by`, one, one.parts, live, go, isDrawn)} ${cells(say`Feeds`, one, one.usedBy, live, go, isDrawn)}
  </div>`;
}
