/** A call in a formula's text, complete or still being typed. Places count characters from 0. */
export interface TypedCall {
  readonly name: string;
  /** Where the name begins. */
  readonly start: number;
  /** Just after the opening bracket. */
  readonly open: number;
  /** Where the commas between its own arguments stand. */
  readonly commas: readonly number[];
  /** Where the closing bracket stands; undefined while it is missing. */
  readonly close: number | undefined;
  readonly depth: number;
}

interface Open {
  readonly name: string;
  readonly start: number;
  readonly open: number;
  readonly commas: number[];
}

const nameBefore = /[\p{L}_][\p{L}\p{N}_.]*$/u;

/** Where a text in quotation marks (or a page's name in apostrophes) that begins here ends, or past the end. */
export function endOfQuote(text: string, start: number): number {
  const mark = text[start] as string;
  for (let i = start + 1; i < text.length; i++) {
    if (text[i] !== mark) continue;
    if (text[i + 1] !== mark) return i;
    i++;
  }
  return text.length;
}

/** The calls of a formula's text in the order of their names; brackets without a name are none. */
export function scanCalls(text: string): TypedCall[] {
  const stack: Open[] = [];
  const calls: TypedCall[] = [];
  const close = (at: number | undefined) => {
    const last = stack.pop();
    if (last && last.name !== "") calls.push({ ...last, close: at, depth: stack.length });
  };
  for (let i = 0; i < text.length; i++) {
    const mark = text[i];
    if (mark === '"' || mark === "'") i = endOfQuote(text, i);
    else if (mark === "(") {
      const name = nameBefore.exec(text.slice(0, i))?.[0] ?? "";
      stack.push({ name: name.toUpperCase(), start: i - name.length, open: i + 1, commas: [] });
    } else if (mark === "{") stack.push({ name: "", start: i, open: i + 1, commas: [] });
    else if (mark === "}") stack.pop();
    else if (mark === ",") stack.at(-1)?.commas.push(i);
    else if (mark === ")") close(i);
  }
  while (stack.length > 0) close(undefined);
  return calls.sort((a, b) => a.start - b.start);
}

/** What stands between the brackets and commas of a call that is closed; none for empty brackets. */
export function argumentTexts(text: string, { open, commas, close = text.length }: TypedCall): readonly string[] {
  const ends = [...commas, close];
  const args = [open, ...commas.map((comma) => comma + 1)].map((from, i) => text.slice(from, ends[i]).trim());
  return args.length === 1 && args[0] === "" ? [] : args;
}
