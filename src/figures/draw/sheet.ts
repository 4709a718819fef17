import { rootInk } from "./ink";
import { letterSize } from "./letters";
import { element, escaped } from "./mark";

/** Width of every figure, in drawing units; a letter is 11 of them. */
export const sheetWidth = 360;

export interface SheetOptions {
  readonly title: string;
  /** Everything the drawing says, in sentences. */
  readonly says: string;
  readonly height: number;
  /** Only for a figure that grows with what it shows; all others are `sheetWidth` wide. */
  readonly width?: number;
  readonly content: readonly string[];
}

/**
 * A whole figure. It holds no styles, scripts or ids, so that any number of figures can stand on one page under a
 * strict content policy, and it names its own size, so that it also opens alone.
 */
export function sheet({ title, says, height, width = sheetWidth, content }: SheetOptions): {
  says: string;
  svg: string;
} {
  const tall = Math.ceil(height);
  const svg = element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${width} ${tall}`,
      width,
      height: tall,
      role: "img",
      "aria-label": `${title}. ${says}`,
      color: rootInk,
      fill: "none",
      "font-family": "var(--letters, 'IBM Plex Sans', 'Helvetica Neue', Arial, sans-serif)",
      "font-size": letterSize,
    },
    ["", `<title>${escaped(title)}</title>`, `<desc>${escaped(says)}</desc>`, ...content.filter(Boolean), ""].join(
      "\n",
    ),
  );
  return { says, svg };
}
