import { afterEach, expect, it } from "vitest";
import { useDecimalSign } from "../../src/words/decimal-sign";
import { speak } from "../../src/words/language";
import { retold } from "../../src/words/retold";

afterEach(async () => {
  useDecimalSign(".");
  await speak("en");
});

const finding = "an error in Supply!E7/2.5 would look like a result; let it show, or put words in its place";

it("keeps an English sentence where English is spoken", () => {
  expect(retold(finding)).toBe(finding);
});

it("tells an English finding again in German, with what was put into it", async () => {
  await speak("de");
  useDecimalSign(",");
  expect(retold(finding)).toBe(
    "ein Fehler in Supply!E7/2,5 sähe wie ein Ergebnis aus; lassen Sie ihn sehen oder setzen Sie Worte an seine Stelle",
  );
});

it("tells a finding again whose parts are sentences of their own", async () => {
  await speak("de");
  expect(retold("the formula is 300 letters long; give its parts rows of their own")).toBe(
    "die Formel ist 300 Zeichen lang; geben Sie ihren Teilen eigene Zeilen",
  );
});

it("leaves what no catalogue knows as it is", async () => {
  await speak("de");
  expect(retold("Tern Quay: ask the owner")).toBe("Tern Quay: ask the owner");
});

it("tells again what is said of a place before a colon", async () => {
  await speak("de");
  expect(retold('step L: formula "length length": write the product sign *')).toBe(
    "step L: Formel „length length“: schreiben Sie das Malzeichen *",
  );
});
