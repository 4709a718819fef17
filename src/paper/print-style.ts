import { sayAround } from "../words/say";
import type { SheetSize } from "./sheet-size";
import { styleText } from "./style-text";

const small = 'font: 7.5pt "IBM Plex Sans", "Helvetica Neue", Arial, sans-serif; color: #000';

/** What stands in the margins of every sheet. */
export interface Margins {
  /** Job and option. */
  readonly left: string;
  /** Layout, revision and date. */
  readonly right: string;
  readonly foot: string;
}

/** `page 2 of 6`, counted by whoever prints. */
const pageOfPages = (): string =>
  sayAround`page ${{ counts: "page" }} of ${{ counts: "pages" }}`
    .filter((part) => part !== "")
    .map((part) => (typeof part === "string" ? styleText(part) : `counter(${part.counts})`))
    .join(" ");

/** The sheet itself: its size, its margins, and what stands in them with the page's number. */
export const pageStyle = (size: SheetSize, { left, right, foot }: Margins): string => `@page {
  size: ${size}; margin: 20mm 14mm 18mm 16mm;
  @top-left { content: ${styleText(left)}; ${small}; text-align: left; width: 50%; vertical-align: bottom; padding-bottom: 3mm }
  @top-right { content: ${styleText(right)}; ${small}; text-align: right; width: 50%; vertical-align: bottom; padding-bottom: 3mm }
  @bottom-left { content: ${styleText(foot)}; ${small}; text-align: left; width: 82%; vertical-align: top; padding-top: 3mm }
  @bottom-right { content: ${pageOfPages()}; ${small}; text-align: right; width: 18%; vertical-align: top; padding-top: 3mm }
}`;

/** Black on white, for pens and printers; the same on a screen that shows the file. */
export const bodyStyle = `:root { color-scheme: light; --letters: "IBM Plex Sans", "Helvetica Neue", Arial, sans-serif }
* { box-sizing: border-box }
body { margin: 0; background: #fff; color: #000; font: 9.5pt/1.35 var(--letters); font-variant-numeric: tabular-nums }
@media screen { body { max-width: 182mm; margin: 8mm auto; padding: 0 4mm } }
h1 { margin: 0 0 1mm; font-size: 17pt; line-height: 1.15 }
h2 { margin: 5mm 0 1.5mm; padding-bottom: .6mm; border-bottom: .35mm solid; font-size: 11pt; break-after: avoid }
p { margin: 0 0 1.5mm; overflow-wrap: anywhere }
.title { display: grid; grid-template-columns: repeat(4, 1fr); margin: 2mm 0 3mm; border: .35mm solid }
.title div { padding: 1mm 2mm; border-right: .2mm solid; overflow-wrap: anywhere }
.title div:last-child { border-right: 0 }
.title i, .field i, .basis, th { font-size: 7.5pt; font-style: normal; font-weight: 400 }
.title i { display: block }
.basis { display: block; color: #333 }
.stop, .go { margin: 2mm 0; padding: 1.5mm 2.5mm; border: .35mm solid; overflow-wrap: anywhere; font-weight: 600 }
.stop { border-width: 1.2mm }
.caution { margin: 1.5mm 0; padding: 1mm 2.5mm; border-left: 2mm solid; background: #eee; print-color-adjust: exact;
  -webkit-print-color-adjust: exact; break-inside: avoid; break-after: avoid; overflow-wrap: anywhere }
.caution b, .hold b { text-transform: uppercase; letter-spacing: .03em }
.step { display: grid; grid-template-columns: 5mm 52mm 1fr; gap: 0 2.5mm; padding: 1mm 0; border-bottom: .15mm solid #888;
  break-inside: avoid; overflow-wrap: anywhere }
.hold { margin: 1.5mm 0; padding: 1.2mm 2.5mm 1.5mm; border: .7mm solid; break-inside: avoid; overflow-wrap: anywhere }
.fields { display: flex; gap: 2.5mm; margin-top: 1.2mm }
.field { flex: 1; display: block; min-height: 9mm; padding: .3mm 1mm; border: .2mm solid; line-height: 1.1 }
.field.wide { flex: 2 }
.field.tall { min-height: 16mm }
.tick { display: inline-block; width: 3.6mm; height: 3.6mm; border: .3mm solid; vertical-align: -.5mm }
table { width: calc(100% - .2mm); table-layout: auto; margin: 1mm 0 2mm; border-collapse: collapse }
thead { display: table-header-group }
tr { break-inside: avoid }
th, td { padding: .8mm 2mm .8mm 0; border-bottom: .15mm solid #888; text-align: left; vertical-align: top; overflow-wrap: anywhere }
th { border-bottom: .35mm solid }
.number { text-align: right; white-space: nowrap }
td.pen { border: .2mm solid; height: 7mm; padding: .3mm 1mm; font-size: 7.5pt }
.sum td { border-top: .35mm solid; border-bottom: .35mm solid; font-weight: 600 }
.short { font-weight: 600 }
.figures { display: flex; gap: 4mm; align-items: flex-start; margin: 2mm 0; break-inside: avoid }
.figures figure { flex: 0 0 calc(50% - 2mm); margin: 0; min-width: 0 }
.figures svg { display: block; width: 100%; height: auto }
figcaption { font-size: 7.5pt }
.aid { margin-top: 2mm; font-size: 7.5pt; color: #333 }
table.fixed { table-layout: fixed }
.fixed th:nth-child(1) { width: 46% }
.buys th:nth-child(n + 3):nth-child(-n + 4) { width: 9% }
.buys th:nth-child(2) { width: 15% }
.reads th:nth-child(3) { width: 24% }
.fixed.signs th:nth-child(1) { width: 36% }
.signs th:nth-child(2), .signs th:nth-child(4) { width: 13% }
.fixed.changes th:nth-child(1) { width: 13% }
.changes th:nth-child(2) { width: 39% }
.changes th:nth-child(3) { width: 16% }
.changes th:nth-child(4) { width: 8% }
/* The edge of the page cuts half of a line that lies on it; the templates' sheets have no such edge. */
.title, .stop, .go, .hold, .keep > .fields { margin-right: .2mm }
.keep { break-inside: avoid }`;
