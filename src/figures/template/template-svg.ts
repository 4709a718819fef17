import { element, escaped } from "../draw/mark";
import { rim, strip } from "./paper";
import { bar, black, checkBar, content, root, white } from "./paper-drawing";
import type { Template } from "./template";

/** The whole template on one drawing of its own size, for a plotter, in mm. */
export function templateSvg(template: Template): string {
  const width = Math.max(template.right - template.left, checkBar + 80) + 2 * rim;
  const height = template.top - template.bottom + strip + 2 * rim;
  const words = element(
    "text",
    { x: rim + checkBar + 6, y: height - rim, "font-size": 3.2, fill: black },
    escaped(template.note),
  );
  return root(width, height, template.title, template.says, [
    element("rect", { x: 0, y: 0, width, height, fill: white }),
    ...content(template, template.left - rim, template.top + rim),
    bar(rim, height - rim),
    words,
  ]);
}
