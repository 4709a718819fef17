import { unsafeHTML } from "lit/directives/unsafe-html.js";
import { html, nothing, type TemplateResult } from "lit/html.js";
import { type Figure, isDrawn } from "../../figures/figure";
import type { FigureName } from "../../figures/kinds";
import { firstOption, isOptionPage, type Notebook, optionsOf } from "../../notebook/model";
import { said, say } from "../../words/say";
import { inBackground } from "../background";
import type { Desk } from "../desk";
import { capital } from "../shown/count-words";

type Figures = typeof import("../../figures/pages");

/** The shown page's drawing for the option that is looked at. */
export class Drawings {
  private figures: Figures | undefined;
  /** Which of a page's figures was picked, by page id. */
  private readonly picked = new Map<string, FigureName>();
  private option = "";
  private drawn: { readonly notebook: Notebook; readonly of: string; readonly figure: Figure } | undefined;

  constructor(
    private readonly desk: Desk,
    private readonly update: () => void,
  ) {}

  /** Fetches what draws; the page is read and calculated before that. */
  load(): void {
    inBackground(
      import("../../figures/pages").then((figures) => {
        this.figures = figures;
        this.update();
      }),
    );
  }

  show(): TemplateResult | typeof nothing {
    const { page, notebook } = this.desk;
    const names = this.figures?.figureNames(notebook, page.name) ?? [];
    const name = this.picked.get(page.id) ?? names[0];
    if (!name || !names.includes(name)) return nothing;
    const figure = this.figure(name);
    if (!figure) return nothing;
    const pick = (event: Event) => {
      const chosen = names[(event.target as HTMLSelectElement).selectedIndex];
      if (chosen) this.picked.set(page.id, chosen);
      this.update();
    };
    const choice =
      names.length > 1
        ? html`<select aria-label=${say`Which drawing`} @change=${pick}>
            ${names.map((one) => html`<option ?selected=${one === name}>${capital(said(one))}</option>`)}
          </select>`
        : nothing;
    return html`<h2>${say`Drawing`} ${choice}</h2>
      <figure>
        ${isDrawn(figure) ? html`<div class="drawing">${unsafeHTML(figure.svg)}</div>` : html`<p class="soft">${figure.sentence}</p>`}
        <figcaption class="soft">${isDrawn(figure) ? `${this.option}. ${figure.title}.` : nothing}</figcaption>
      </figure>`;
  }

  /** The option of the selected column; that of the last one where the selection is in no option. */
  private optionNow(): string {
    const { page, block, notebook } = this.desk;
    const options = optionsOf(notebook);
    const selected = isOptionPage(page) ? options[block.from.column - firstOption] : undefined;
    return selected ?? (options.includes(this.option) ? this.option : (options[0] ?? ""));
  }

  private figure(name: FigureName): Figure | undefined {
    const { live, notebook } = this.desk;
    if (!live || !this.figures) return undefined;
    this.option = this.optionNow();
    const of = `${name} ${this.option}`;
    if (this.drawn?.notebook !== notebook || this.drawn.of !== of) {
      this.drawn = { notebook, of, figure: this.figures.figureOf(live, name, this.option) };
    }
    return this.drawn.figure;
  }
}
