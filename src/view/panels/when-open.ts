import { Directive, directive, type ElementPart } from "lit/directive.js";
import { nothing, render, type TemplateResult } from "lit/html.js";

type Content = () => TemplateResult;

class WhenOpen extends Directive {
  private details: HTMLDetailsElement | null = null;
  private content: Content | undefined;

  render(_content: Content): typeof nothing {
    return nothing;
  }

  override update({ element }: ElementPart, [content]: [Content]): typeof nothing {
    this.content = content;
    const fill = () => render(this.details?.open === false ? nothing : this.content?.(), element as HTMLElement);
    if (!this.details) {
      this.details = element.closest("details");
      this.details?.addEventListener("toggle", fill);
    }
    fill();
    return nothing;
  }
}

/** Fills an element inside a `details` only while that is open: a long list costs nothing as long as it is folded. */
export const whenOpen = directive(WhenOpen);
