import { html, nothing, type TemplateResult } from "lit/html.js";
import { say } from "../../words/say";

/** Hints to one task, one more at each press. */
export class Hints {
  private shown = 0;

  constructor(private readonly update: () => void) {}

  show(all: readonly string[]): TemplateResult | typeof nothing {
    if (all.length === 0) return nothing;
    const next = () => {
      this.shown += 1;
      this.update();
    };
    return html`<section class="hints" aria-label=${say`Hints`}>
      <h2>${say`Hints`}</h2>
      <ol aria-live="polite">${all.slice(0, this.shown).map((text) => html`<li>${text}</li>`)}</ol>
      ${
        this.shown < all.length
          ? html`<button type="button" @click=${next}>${say`${this.shown === 0 ? say`Show a hint` : say`Show the next hint`} (${this.shown + 1} of ${all.length})`}</button>`
          : nothing
      }
    </section>`;
  }
}
