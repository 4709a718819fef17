import type { LiveNotebook } from "../notebook/live";
import { usualPage } from "../notebook/usual-page";
import { say } from "../words/say";
import { type Line, lineOf, linesOf } from "./line";

/** Rows of one option, asked for by page and key; what is not there is remembered, so that the sheet can say it. */
export class LinesAsked {
  private readonly absent: string[] = [];

  constructor(
    readonly live: LiveNotebook,
    readonly option: string,
  ) {}

  /** The row `Page.key`. */
  line(address: string): Line | undefined {
    const line = lineOf(this.live, address, this.option);
    if (!line && !this.absent.includes(address)) this.absent.push(address);
    return line;
  }

  lines(addresses: readonly string[]): readonly Line[] {
    return addresses.flatMap((address) => this.line(address) ?? []);
  }

  /** The number in a row; undefined where there is none. */
  number(address: string): number | undefined {
    const value = this.line(address)?.value;
    return value?.kind === "number" ? value.value : undefined;
  }

  /** All rows of a page; none where the page is not there. */
  page(name: string): readonly Line[] {
    const lines = linesOf(this.live, name, this.option);
    if (!lines) this.absent.push(`page ${name}`);
    return lines ?? [];
  }

  /** One sentence that names what this sheet looked for and did not find; undefined where nothing is missing. */
  get missing(): string | undefined {
    if (this.absent.length === 0) return undefined;
    const isPage = (address: string) =>
      usualPage(this.live.notebook.pages, address.replace(/\.[^.]*$/, "")) !== undefined;
    const pages = new Set(
      this.absent
        .filter((address) => !address.startsWith("page ") && !isPage(address))
        .map((address) => `page ${address.replace(/\.[^.]*$/, "")}`),
    );
    const list = [
      ...new Set([...this.absent.filter((address) => address.startsWith("page ") || isPage(address)), ...pages]),
    ];
    return say`This sheet is not complete: the notebook has no ${list.join(say`, no `)}; add what is missing, or fill it in by pen.`;
  }
}
