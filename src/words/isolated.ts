/** Letters that are written from right to left, and signs that turn the direction of what follows them. */
const turning =
  /[\u0590-\u08ff\u200e\u200f\u202a-\u202e\u2066-\u2069\ufb1d-\ufdff\ufe70-\ufefc\u{10800}-\u{10fff}\u{1e800}-\u{1eeff}]/u;

/**
 * A text that does not change the order of what stands beside it: where it could, it is set apart by the signs that
 * Unicode has for that. Any other text comes back as it is.
 */
export function isolated(text: string): string {
  if (!turning.test(text)) return text;
  let open = 0;
  let kept = "";
  for (const letter of text) {
    if (letter === "\u2069" && open === 0) continue;
    if (letter === "\u2069") open--;
    else if (letter >= "\u2066" && letter <= "\u2068") open++;
    kept += letter;
  }
  return `\u2068${kept}${"\u2069".repeat(open + 1)}`;
}

/** Names one after the other, each in its own order. */
export const listed = (names: readonly string[]): string => names.map(isolated).join(", ");
