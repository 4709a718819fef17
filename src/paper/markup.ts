import { element, escaped } from "../figures/draw/mark";

type Attributes = Readonly<Record<string, string | undefined>>;

/** An element around markup that is already safe; the attributes are escaped here. */
export const box = (name: string, attributes: Attributes, ...content: readonly string[]): string =>
  // A space keeps an element without content from being closed in its own tag, which HTML does not know.
  element(name, attributes, content.join("") || " ");

/** An element around words of the notebook. */
export const says = (name: string, text: string, kind?: string): string => box(name, { class: kind }, escaped(text));

/** A small square to tick. */
export const tick = box("span", { class: "tick" });

/** A field to fill in by pen, with its name in small letters. */
export const field = (name: string, kind = ""): string =>
  box("span", { class: `field ${kind}`.trim() }, says("i", name));
