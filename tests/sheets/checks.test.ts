import { describe, expect, it } from "vitest";
import { setCells } from "../../src/notebook/edit-cells";
import { firstOption, optionsOf } from "../../src/notebook/model";
import { columnName, pagePrefix } from "../../src/notebook/references";
import { outcomeOf, outcomeWords } from "../../src/notebook/verdict";
import { type KeyedRow, keyedRows, openWorked, valueAt, workedFolders } from "./worked";

/** Pages with readings that are taken when the work is done. */
const afterwards = ["Hand-over", "Service"];

const share = "(less than 0\\.1|0\\.\\d|1\\.0|\\d+) %";
const words = new RegExp(`^(holds, (nothing|${share}) to spare|falls short by ${share})$`);

describe.each(workedFolders)("the checks of %s", (folder) => {
  const live = openWorked(folder);
  const options = optionsOf(live.notebook);
  const rows = keyedRows(live.notebook);
  const checks = rows.filter(({ kind }) => kind === "check");
  const inputs = rows.filter(({ kind }) => kind === "input");
  const later = (row: KeyedRow) => afterwards.includes(row.page.name);

  const verdicts = (of: readonly KeyedRow[]) =>
    of.flatMap(({ page, row, name, texts }) =>
      texts.map((text, option) => ({
        name: `${name}@${options[option]}`,
        words: outcomeWords(outcomeOf(live.value({ page: page.id, row, column: firstOption + option }), text)),
      })),
    );

  it("say holds or falls short and by how much", () => {
    const wordless = verdicts(checks.filter((check) => !later(check))).filter(({ words: said }) => !words.test(said));
    expect(wordless).toEqual([]);
  });

  it("say so after the work as well, or that nothing was measured yet", () => {
    const wordless = verdicts(checks.filter(later)).filter(
      ({ words: said }) => !words.test(said) && said !== "open: not measured yet",
    );
    expect(wordless).toEqual([]);
  });

  it("are gathered on Compare, every one of the pages before the work", () => {
    const gathered = checks.filter(({ page }) => page.name === "Compare").map(({ texts }) => texts[0]);
    const elsewhere = checks.filter((check) => !later(check) && check.page.name !== "Compare");
    expect(gathered.toSorted()).toEqual(
      elsewhere.map(({ page, row }) => `=${pagePrefix(page.name)}${columnName(firstOption)}${row + 1}`).toSorted(),
    );
  });

  it("rule one option out by something else than another, and leave one that holds", () => {
    const said = options.map((option) => valueAt(live, `Compare.ruled_out@${option}`));
    const texts = said.map((value) => (value.kind === "text" ? value.text : ""));
    expect(texts).toContain("nothing, all checks hold");
    expect(new Set(texts).size).toBeGreaterThan(1);
    options.forEach((option, i) => {
      const short = verdicts(checks.filter(({ page }) => page.name === "Compare")).filter(
        ({ name, words: verdict }) => name.endsWith(`@${option}`) && verdict.startsWith("falls short"),
      );
      expect(texts[i] === "nothing, all checks hold").toBe(short.length === 0);
    });
  });

  it("fall short on a page where any one input is left empty, so that no empty cell passes", () => {
    const needed = inputs.filter((row) => !later(row) && row.page.name !== "Job sheet");
    expect(needed.length).toBeGreaterThan(250);
    needed.forEach(({ page, row, name }, i) => {
      const option = i % options.length;
      live.apply("empty", (notebook) =>
        setCells(notebook, [{ page: page.id, row, column: firstOption + option, text: "" }]),
      );
      const full = valueAt(live, `${page.name}.full_ok@${options[option]}`);
      const verdict = valueAt(live, `Compare.ruled_out@${options[option]}`);
      const go = valueAt(live, `Job sheet.go@${options[option]}`);
      live.undo();
      expect(full.kind === "number" && full.value <= -1, name).toBe(true);
      expect(verdict, name).not.toEqual({ kind: "text", text: "nothing, all checks hold" });
      expect(go, name).toMatchObject({ kind: "text", text: expect.stringMatching(/^STOP/) });
    });
  });

  it("stay open, without an error, when every reading of hand-over and service is empty", () => {
    const readings = inputs.filter((row) => later(row) && /measured|record/.test(row.basis));
    expect(readings.length).toBeGreaterThan(30);
    live.apply("empty", (notebook) =>
      setCells(
        notebook,
        readings.flatMap(({ page, row, texts }) =>
          texts.map((_, option) => ({ page: page.id, row, column: firstOption + option, text: "" })),
        ),
      ),
    );
    const said = verdicts(checks.filter(later)).map(({ words: verdict }) => verdict);
    const errors = rows.filter(later).flatMap(({ page, row, name, texts }) =>
      texts.flatMap((_, option) => {
        const value = live.value({ page: page.id, row, column: firstOption + option });
        return value.kind === "error" ? [`${name} ${value.sentence}`] : [];
      }),
    );
    live.undo();
    expect(new Set(said)).toEqual(new Set(["open: not measured yet"]));
    expect(errors).toEqual([]);
  });
});
