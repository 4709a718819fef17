/** What of a page tells which one it is. */
interface Named {
  readonly name: string;
  readonly file: string;
}

/** What a page of a name is filed under, without its ending: `side-force`. */
export const fileStem = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/g, "") || "page";

/**
 * The page that figures, sheets on paper and studies call by the name it was shipped with. A page keeps its file when
 * it is given another name, so it is found by that where no page has the name.
 */
export function usualPage<T extends Named>(pages: readonly T[], name: string): T | undefined {
  const file = `${fileStem(name)}.csv`;
  return (
    pages.find((page) => page.name.toLowerCase() === name.toLowerCase()) ??
    pages.find((page) => page.file.toLowerCase() === file)
  );
}
