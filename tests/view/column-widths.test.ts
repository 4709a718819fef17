import { describe, expect, it } from "vitest";
import { firstOption, lead, type Page } from "../../src/notebook/model";
import { columnWidths, isSign } from "../../src/view/grid/column-widths";
import type { Look } from "../../src/view/grid/look";
import { isOverOneLine, rowHeight } from "../../src/view/grid/row-height";
import { fitted, least, range } from "../../src/view/grid/share-room";
import { lookWidth } from "../../src/view/grid/text-width";

/** Room of a window of 820 px, and one without want. */
const narrow = 738;
const ample = 1100;

const sum = (widths: readonly number[]): number => widths.reduce((all, one) => all + one, 0);

/** A page with a number and a cell of words or of a verdict under each option. */
function pageOf(options: number, under: Look): { page: Page; look: (row: number, column: number) => Look } {
  const names = Array.from({ length: options }, (_, place) => `Boat ${place + 1}`);
  const rows = [
    ["Quantity", "Key", "Unit", "Basis", ...names],
    ["Length of the run out and back", "run_length", "m", "measured on board", ...names.map(() => "12.5")],
    ["Volts at the motor against the rated voltage", "volts_ok", "margin", "holds from 0", ...names.map(() => "=0")],
  ];
  const look = (row: number, column: number): Look => {
    const text = rows[row]?.[column] ?? "";
    switch (column) {
      case lead.quantity:
        return { shape: "label", text, isWrapped: true };
      case lead.key:
        return { shape: "key", text, isWrapped: true };
      case lead.unit:
        return { shape: "unit", text };
      case lead.basis:
        return { shape: "basis", text, isWrapped: true };
      default:
        return row === 1 ? { shape: "input", text, isRight: true } : under;
    }
  };
  return { page: { id: "page-1", name: "Supply", rows } as unknown as Page, look };
}

const verdict = (text: string): Look => ({
  shape: text.startsWith("holds") ? "holds" : "short",
  text,
  margin: text.startsWith("holds") ? 0.12 : -0.12,
  isRight: true,
  isWrapped: true,
});

describe("the columns of a page with options", () => {
  it("have all three options in a narrow window, where the basis is no more than a sign", () => {
    const { page, look } = pageOf(3, verdict("short by 12 %"));
    const widths = columnWidths(page, look, narrow);
    expect(sum(widths)).toBeLessThanOrEqual(narrow);
    expect(isSign(page, lead.basis, widths[lead.basis] ?? 0)).toBe(true);
    expect(widths[lead.basis]).toBeGreaterThanOrEqual(24);
    for (const width of widths.slice(firstOption)) expect(width).toBeGreaterThan(lookWidth(verdict("short by 12 %")));
  });

  it("show the basis in words where there is room for it", () => {
    const { page, look } = pageOf(3, verdict("short by 12 %"));
    const widths = columnWidths(page, look, ample);
    expect(sum(widths)).toBeLessThanOrEqual(ample);
    expect(widths[lead.basis]).toBeGreaterThanOrEqual(70);
    expect(isSign(page, lead.basis, widths[lead.basis] ?? 0)).toBe(false);
  });

  it("show the basis in a narrow window when there is but one option", () => {
    const { page, look } = pageOf(1, verdict("holds, 12 %"));
    expect(columnWidths(page, look, narrow)[lead.basis]).toBeGreaterThanOrEqual(70);
  });

  it("let a long shortfall run on below before an option goes out of sight, and its row is taller", () => {
    const short = verdict("verfehlt um 27 %");
    const { page, look } = pageOf(3, short);
    const widths = columnWidths(page, look, narrow);
    expect(sum(widths)).toBeLessThanOrEqual(narrow);
    const own = widths[firstOption] ?? 0;
    expect(own).toBeGreaterThan(lookWidth({ ...short, text: "verfehlt" }));
    expect(isOverOneLine(short, own)).toBe(true);
    expect(rowHeight(page, 2, look, widths)).toBeGreaterThan(
      rowHeight(page, 1, (_, column) => look(1, Math.max(1, column)), widths),
    );
    const wide = columnWidths(page, look, ample);
    expect(isOverOneLine(short, wide[firstOption] ?? 0)).toBe(false);
  });

  it("scroll with more options than fit, none of them with a verdict that is cut", () => {
    for (const room of [narrow, ample]) {
      const { page, look } = pageOf(12, verdict("short by 12 %"));
      const widths = columnWidths(page, look, room);
      expect(sum(widths)).toBeGreaterThan(room);
      for (const width of widths.slice(firstOption)) expect(width).toBeGreaterThan(lookWidth(verdict("short by 12 %")));
    }
  });

  it("have options of one width in every room, wide enough for the longest word of a verdict", () => {
    for (const words of ["holds, 12 %", "short by < 0.1 %", "verfehlt um < 0,1 %"]) {
      const { page, look } = pageOf(3, verdict(words));
      const longest = Math.max(...words.split(" ").map((text) => lookWidth({ ...verdict(words), text })));
      for (let room = 200; room <= 1600; room += 25) {
        const options = columnWidths(page, look, room).slice(firstOption);
        expect(new Set(options).size, `${room} px`).toBe(1);
        expect(options[0], `${room} px`).toBeGreaterThanOrEqual(longest);
      }
    }
  });

  it("give sentences three narrow columns rather than two wide ones", () => {
    const text = "the keel carries the weight on blocks; stands only steady it, chained in pairs";
    const { page, look } = pageOf(3, { shape: "input", text, isWrapped: true });
    const sentences = (row: number, column: number) => (row === 1 ? look(2, column) : look(row, column));
    const narrowed = columnWidths(page, sentences, narrow);
    expect(sum(narrowed)).toBeLessThanOrEqual(narrow);
    for (const width of narrowed.slice(firstOption)) expect(width).toBeGreaterThanOrEqual(140);
    expect(columnWidths(page, sentences, 1400)[firstOption]).toBeGreaterThanOrEqual(220);
  });
});

describe("columns that share a room", () => {
  const ranges = [range(50, 100, 200), range(50, 250, 150), range(80, 60, 200)];

  it("have what they want where there is room, no more than their most and no less than their least", () => {
    expect(fitted(ranges, 1000)).toEqual([100, 150, 80]);
  });

  it("give in the same measure down to what they need, and no further", () => {
    expect(fitted(ranges, 255)).toEqual([75, 100, 80]);
    expect(least(ranges)).toBe(180);
    expect(fitted(ranges, 100)).toEqual([50, 50, 80]);
  });
});
