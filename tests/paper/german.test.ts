import { afterEach, beforeEach, expect, it } from "vitest";
import { signatures } from "../../src/paper/pieces";
import { pageStyle } from "../../src/paper/print-style";
import { speak } from "../../src/words/language";

beforeEach(() => speak("de"));
afterEach(() => speak("en"));

it("counts the sheets and names the boxes in the language that is spoken", () => {
  const style = pageStyle("A4", { left: "", right: "", foot: "" });
  expect(style).toContain('content: "Seite " counter(page) " von " counter(pages);');
  const boxes = signatures(["Werft"]);
  expect(boxes).toContain("Werft: Name");
  expect(boxes).toContain("Datum");
  expect(boxes).toContain("Unterschrift<");
  expect(boxes).not.toMatch(/\b(date|signature)\b/);
});
