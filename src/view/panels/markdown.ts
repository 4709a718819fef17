import DOMPurify from "dompurify";
import { Marked } from "marked";

const signs: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;" };

/** Markup in a note is text, to be read as it was written: it never becomes elements, not even to be thrown away. */
const asText = ({ text }: { readonly text: string }): string => text.replace(/[&<>]/g, (sign) => signs[sign] ?? sign);

const marked = new Marked({ gfm: true, async: false, renderer: { html: asText } });

const tags = "p br hr ul ol li h1 h2 h3 h4 h5 h6 strong em del code pre blockquote table thead tbody tr th td a".split(
  " ",
);

/**
 * Markdown as elements: text, lists, tables and links, nothing that runs, loads or styles. Links open beside the page
 * and do not say where they were followed from.
 */
export function printMarkdown(markdown: string): DocumentFragment {
  const page = DOMPurify.sanitize(marked.parse(markdown) as string, {
    ALLOWED_TAGS: tags,
    ALLOWED_ATTR: ["href", "align", "start"],
    ALLOWED_URI_REGEXP: /^(?:https?|mailto):/i,
    ALLOW_DATA_ATTR: false,
    ALLOW_ARIA_ATTR: false,
    RETURN_DOM_FRAGMENT: true,
  });
  for (const link of page.querySelectorAll("a")) {
    link.target = "_blank";
    link.rel = "noopener noreferrer";
  }
  // The page has a title of its own; headings in notes come below it.
  for (const heading of page.querySelectorAll("h1, h2, h3")) {
    const lower = document.createElement("h4");
    lower.append(...heading.childNodes);
    heading.replaceWith(lower);
  }
  return page;
}
