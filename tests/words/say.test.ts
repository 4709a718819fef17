import { afterEach, describe, expect, it } from "vitest";
import { useDecimalSign, withDecimalSign } from "../../src/words/decimal-sign";
import { speak } from "../../src/words/language";
import { counted, said, say, sayAround } from "../../src/words/say";

afterEach(async () => {
  useDecimalSign(".");
  await speak("en");
});

describe("a text", () => {
  it("is said in English as it is written", () => {
    expect(say`plausible ${1.5} to ${"2 m"}`).toBe("plausible 1.5 to 2 m");
    expect(counted(1, "row")).toBe("1 row");
    expect(counted(0, "row")).toBe("0 rows");
  });

  it("is said in German with what is put in at its place, numbers with the person's sign", async () => {
    await speak("de");
    useDecimalSign(",");
    expect(say`plausible ${1.5} to ${"2 m"}`).toBe("plausibel 1,5 bis 2 m");
    expect(counted(1, "row")).toBe("1 Zeile");
    expect(counted(3, "row")).toBe("3 Zeilen");
    expect(said("Voltage lost in a copper run")).toBe("Spannungsabfall in einer Kupferleitung");
  });

  it("that no catalogue has stays English, and braces in what is put in stay as they are", async () => {
    await speak("de");
    expect(said("Tern Quay")).toBe("Tern Quay");
    expect(say`option ${"{0}"} added`).toBe("Variante {0} hinzugefügt");
  });

  it("is said in pieces around what is more than text", async () => {
    await speak("de");
    const part = { page: "Supply" };
    expect(sayAround`; the least is ${part}`).toEqual(["; am knappsten ", part, ""]);
  });

  it("writes the decimal sign between digits only", () => {
    useDecimalSign(",");
    expect(withDecimalSign("1.5 mm; 2.25.")).toBe("1,5 mm; 2,25.");
  });
});
