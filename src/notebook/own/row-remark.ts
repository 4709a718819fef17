import { say } from "../../words/say";
import type { Notebook, Page } from "../model";
import { whyItFails } from "./example-holds";
import type { OwnFunction } from "./own-function";
import { ownFunctions } from "./own-functions";

/** What is to be said of a row of a function page: a mistake that keeps its function from use, or how its example stands. */
export interface RowRemark {
  readonly kind: "mistake" | "differs" | "holds";
  readonly sentence: string;
}

type Remarks = ReadonlyMap<string, RowRemark>;

/** Pages are never changed in place, so what is said of them is worked out once. */
const known = new WeakMap<Notebook["pages"], Remarks>();

const place = (page: string, row: number): string => `${page}\n${row}`;

function remarksOf({ page, definition, mistakes, exampleRows }: OwnFunction): (readonly [string, RowRemark])[] {
  if (mistakes.length > 0) {
    return mistakes.map(({ row, sentence }) => [place(page, row), { kind: "mistake", sentence }] as const);
  }
  return (definition?.examples ?? []).map((example, i) => {
    const why = definition && whyItFails(definition, example);
    const remark: RowRemark = why
      ? { kind: "differs", sentence: why }
      : { kind: "holds", sentence: say`the function gives what the example says` };
    return [place(page, exampleRows[i] ?? -1), remark];
  });
}

/** The remark on a row of a function page, as one sentence without its place; undefined where there is none. */
export function rowRemark(notebook: Pick<Notebook, "pages">, page: Page, row: number): RowRemark | undefined {
  const before = known.get(notebook.pages);
  const all = before ?? new Map(ownFunctions(notebook).flatMap(remarksOf));
  if (!before) known.set(notebook.pages, all);
  return all.get(place(page.name, row));
}
