// Colours come from the page that holds the drawing; the second value serves a drawing that stands alone. Shapes and
// words carry every meaning as well, so that a drawing also reads in one colour.

/** The drawing's own ink, set once at the root. */
export const ink = "currentColor";

export const rootInk = "var(--ink, light-dark(#1c2833, #ece7da))";
export const paper = "var(--paper, light-dark(#fdfbf5, #171c21))";
/** Leaders, axes and everything that only explains. */
export const soft = "var(--soft, light-dark(#5b6670, #a7b0b8))";
export const rule = "var(--rule, light-dark(#d9d2c1, #3a434b))";
/** The faint tone of cut material. */
export const cut = "var(--pencil, light-dark(#e6dfcb, #39424a))";
export const holds = "var(--holds, light-dark(#0d6560, #6cc7bf))";
export const short = "var(--short, light-dark(#a12a16, #f2907c))";
export const care = "var(--care, light-dark(#7a5900, #dcb95a))";

const variable = /var\(--[a-z]+, light-dark\((#[0-9a-f]+), #[0-9a-f]+\)\)/g;

/** The same drawing in fixed colours of the light page, for programs that know no variables. */
export const inFixedInk = (svg: string): string =>
  svg
    .replace(variable, "$1")
    .replaceAll("currentColor", "#1c2833")
    .replace(/var\(--letters, ([^)]*)\)/, "$1")
    .replace(/ color="[^"]*"/, "");

/** The same drawing in black on white, for printers. */
export const inBlack = (svg: string): string =>
  inFixedInk(svg)
    .replaceAll(/#(fdfbf5)/g, "#ffffff")
    .replaceAll(/#(e6dfcb|d9d2c1)/g, "#dddddd")
    .replaceAll(/#(1c2833|5b6670|0d6560|a12a16|7a5900)/g, "#000000");
