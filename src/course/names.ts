// A formula of a task is a cell formula in which names stand where cells would.

/** Texts, numbers, then names with what follows them; anything else goes through as it is. */
const pieces = /"(?:[^"]|"")*"|(?<![\w.])(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?|[A-Za-z_][\w.]*(\s*\()?/g;

const flags: readonly string[] = ["TRUE", "FALSE"];

/** Small letters, digits and underscores; not what a cell is called by. */
export const isName = (text: string): boolean => /^[a-z][a-z0-9_]*$/.test(text) && !/^[a-z]{1,3}\d+$/.test(text);

/** A formula as it may be typed, without the equals sign that nobody needs here. */
export const withoutSign = (text: string): string => text.trim().replace(/^=\s*/, "");

/** The formula with something else in the place of each name; `put` gives undefined for what is not known. */
export function replaceNames(formula: string, put: (name: string) => string | undefined): string {
  return formula.replace(pieces, (piece, call) =>
    call !== undefined || !/^[A-Za-z_]/.test(piece) || flags.includes(piece) ? piece : (put(piece) ?? piece),
  );
}

/** The names that a formula uses, each once. */
export function namesIn(formula: string): readonly string[] {
  const names = new Set<string>();
  replaceNames(formula, (name) => {
    names.add(name);
    return undefined;
  });
  return [...names];
}

/** `FN.NAME(a, b + 1)` as a name and its arguments; undefined for anything that is not one call and no more. */
export function callIn(formula: string): { readonly name: string; readonly args: readonly string[] } | undefined {
  const [, name, inside] = /^\s*([A-Z][A-Z0-9.]*)\s*\(([\s\S]*)\)\s*$/.exec(formula) ?? [];
  if (name === undefined || inside === undefined) return undefined;
  const args: string[] = [""];
  let depth = 0;
  for (const piece of inside.match(/"(?:[^"]|"")*"|[\s\S]/g) ?? []) {
    if (piece === "," && depth === 0) {
      args.push("");
      continue;
    }
    if (piece === "(" || piece === "{") depth += 1;
    if (piece === ")" || piece === "}") depth -= 1;
    // The bracket that was opened first is closed before the end: two calls, not one.
    if (depth < 0) return undefined;
    args[args.length - 1] += piece;
  }
  return { name, args: args.length === 1 && args[0]?.trim() === "" ? [] : args.map((arg) => arg.trim()) };
}

/** Every call in a formula as it is written there, inner ones before those that use them. */
export function callsIn(formula: string): readonly string[] {
  const found: string[] = [];
  const open: { readonly from: number; readonly isCall: boolean }[] = [];
  for (const { 0: piece, index } of formula.matchAll(/"(?:[^"]|"")*"|[A-Z][A-Z0-9.]*\s*\(|[()]/g)) {
    if (piece.endsWith("(")) open.push({ from: index, isCall: piece.length > 1 });
    else if (piece === ")") {
      const last = open.pop();
      if (last?.isCall) found.push(formula.slice(last.from, index + 1));
    }
  }
  return found;
}
