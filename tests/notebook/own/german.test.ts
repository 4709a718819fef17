import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { catalogue } from "../../../src/functions";
import { setCells } from "../../../src/notebook/edit-cells";
import { LiveNotebook } from "../../../src/notebook/live";
import { type Notebook, type Page, pageById } from "../../../src/notebook/model";
import { beginFunction, copyFunction } from "../../../src/notebook/own/add-function";
import { ownFunctions } from "../../../src/notebook/own/own-functions";
import { useDecimalSign } from "../../../src/words/decimal-sign";
import { speak } from "../../../src/words/language";
import { sample } from "../sample";

/** A notebook with a small function in which one cell reads otherwise. */
function changed(row: number, column: number, text: string): { readonly notebook: Notebook; readonly page: Page } {
  const { notebook, page } = beginFunction(sample(), "YARD.CUT");
  const after = setCells(notebook, [{ page, row, column, text }]);
  return { notebook: after, page: pageById(after, page) as Page };
}

const mistakes = [
  [5, 2, "length * (1 + los)", "step L: los ist nicht definiert, bevor es gebraucht wird"],
  [5, 2, "length length", "step L: Formel „length length“: schreiben Sie das Malzeichen *"],
  [5, 2, "max(length)", "step L: Formel „max(length)“: max nimmt 2 Argumente, es stehen 1 da"],
  [
    5,
    2,
    "length * (",
    "step L: Formel „length * (“: sie ist am Zeichen 11 nicht lesbar; suchen Sie ein Zeichen oder eine Klammer zu viel oder zu wenig",
  ],
  [5, 2, "", "step L: Die Formel fehlt"],
  [5, 3, "Meter", "step L: Die Einheit „Meter“ ist nicht bekannt; schreiben Sie sie wie mm, m2, kg/m3, N m oder 1 für"],
  [2, 4, "bis 100", "argument length: Die Grenzen „bis 100“ sind nicht lesbar; schreiben Sie sie wie 0 to 5000"],
  [4, 2, "viel", "constant kgPerMetre: „viel“ ist keine Zahl, wie sie in der Datei mit Dezimalpunkt steht"],
  [5, 0, "Schritt", "„Schritt“ ist kein Teil einer Funktion (es gibt function, argument, constant, step"],
  [1, 1, "CUT", "„CUT“ kann kein Funktionsname sein; schreiben Sie zwei Wörter in Großbuchstaben"],
  [8, 2, "10, viel", "example: „viel“ für loss ist weder Zahl noch Text in Anführungszeichen, TRUE oder FALSE"],
] as const;

describe("in German", () => {
  beforeEach(async () => {
    await speak("de");
    useDecimalSign(",");
  });
  afterEach(async () => {
    await speak("en");
    useDecimalSign(".");
  });

  it.each(mistakes)("row %i, column %i: %s", (row, column, text, sentence) => {
    const [own] = ownFunctions(changed(row, column, text).notebook);
    expect(own?.mistakes[0]?.row).toBe(row);
    expect(own?.mistakes[0]?.sentence.startsWith(sentence), own?.mistakes[0]?.sentence).toBe(true);
  });

  it("says a mistake with page and row in the cell that calls the function", () => {
    const live = new LiveNotebook(changed(5, 2, "length * (1 + los)").notebook);
    expect(live.calculate("=YARD.CUT(10)")[0]?.[0]).toMatchObject({
      sentence: "Eigene Funktionen, Zeile 6: step L: los ist nicht definiert, bevor es gebraucht wird",
    });
    live.close();
  });

  it("writes the words of the file, not of the language, so that every copy reads back with its evidence", () => {
    const copied = catalogue.reduce(
      (notebook, one) => copyFunction(notebook, one, `YARD.${one.name.replace(".", "")}`).notebook,
      sample(),
    );
    const own = ownFunctions(copied);
    expect(own.flatMap(({ mistakes }) => mistakes[0] ?? [])).toEqual([]);
    expect(
      own.map(({ definition }) => definition?.sources.map(({ evidence }) => evidence === "common practice")),
    ).toEqual(catalogue.map(({ sources }) => sources.map(({ evidence }) => evidence === "common practice")));
  });
});
