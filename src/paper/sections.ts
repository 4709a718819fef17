import type { Line } from "./line";

export interface Section {
  readonly heading: string;
  readonly lines: readonly Line[];
}

/** A page's rows under the headings that stand above them; rows before the first heading have an empty one. */
export function sectionsOf(lines: readonly Line[]): readonly Section[] {
  const sections: { heading: string; lines: Line[] }[] = [];
  for (const line of lines) {
    const last = sections.at(-1);
    if (line.kind === "heading") sections.push({ heading: line.quantity, lines: [] });
    else if (last) last.lines.push(line);
    else sections.push({ heading: "", lines: [line] });
  }
  return sections.filter((section) => section.lines.length > 0);
}
