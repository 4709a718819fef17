import { spawnSync } from "node:child_process";
import { describe, expect, it } from "vitest";
import { readArguments } from "../../src/cli/arguments";
import { languageOf, languageOfWork } from "../../src/cli/language";
import { sampleFolder } from "./terminal";

function athwart(...args: readonly string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, ["src/cli/launch.mjs", ...args], { encoding: "utf8" });
  return { status, stdout, stderr };
}

describe("the language on the terminal", { timeout: 120_000 }, () => {
  it("is English where nothing is said, and what --language says otherwise", () => {
    expect(languageOf(["calc", "sheets/course"])).toBe("en");
    expect(languageOf(["calc", "--language", "de", "sheets/course"])).toBe("de");
    expect(languageOf(["calc", "sheets/course", "--language=de"])).toBe("de");
    expect(languageOf(["eval", "--", "--language"])).toBe("en");
    expect(() => languageOf(["calc", "--language", "fr"])).toThrow(
      "--language fr: choose en (English) or de (Deutsch).",
    );
  });

  it.each([
    ["de", ["calc", "sheets/course"]],
    ["en", ["calc", "sheets/course", "--json"]],
    ["en", ["moves", "sheets/three-hulls", "Supply.drop", "--csv"]],
    ["en", ["--language", "de", "audit", "sheets/course"]],
    ["en", ["class", "sheets/course", "class.csv"]],
    ["de", ["class", "sheets/course", "class.csv", "--into", "out"]],
  ] as const)("is %s for the work of %j", (language, args) => {
    expect(languageOfWork(args, "de")).toBe(language);
  });

  it("says in one sentence what is wrong with a choice", () => {
    expect(() => readArguments(["calc", "--foo"])).toThrow("--foo is not known; --help lists what there is");
    expect(() => readArguments(["calc", "--json=1"])).toThrow('--json takes no value; leave "1" out.');
    expect(() => readArguments(["calc", "--page"])).toThrow("--page needs a value after it.");
    expect(() => readArguments(["solve", "--low", "-5"])).toThrow(
      "--low has no value before -5; a value that begins so is written --low=-5.",
    );
    expect(readArguments(["solve", "--low=-5"]).values.low).toBe("-5");
  });

  it("says a page in German with a decimal comma, the notebook's own words as they are", () => {
    const { stdout } = athwart("calc", sampleFolder(), "--page", "Supply", "--language", "de");
    expect(stdout).toMatch(/^Größe +Schlüssel +Einheit +/m);
    expect(stdout).toMatch(/^Voltage lost +drop +V +.*\d,\d/m);
    expect(stdout).not.toMatch(/\d\.\d/);
  });

  it("gives JSON that is the same in both languages", () => {
    const folder = sampleFolder();
    const english = athwart("calc", folder, "--json");
    expect(JSON.parse(english.stdout).pages.length).toBeGreaterThan(1);
    expect(athwart("calc", folder, "--json", "--language", "de")).toEqual(english);
  });

  it("refuses in German, with JSON asked for as well", () => {
    const { stderr } = athwart("calc", sampleFolder(), "--page", "Nix");
    expect(stderr).toMatch(/^There is no page "Nix" \(there are .*\)\.\n$/);
    const names = /\(there are (.*)\)/.exec(stderr)?.[1] ?? "";
    const wanted = { status: 1, stdout: "", stderr: `Es gibt keine Seite „Nix“ (vorhanden: ${names}).\n` };
    expect(athwart("calc", sampleFolder(), "--page", "Nix", "--language", "de")).toEqual(wanted);
    expect(athwart("calc", sampleFolder(), "--page", "Nix", "--json", "--language", "de")).toEqual(wanted);
  });

  it("tells the audit's findings and its record again in German, as many as in English", () => {
    const folder = sampleFolder({ "free.csv": "1,=SUM(A1:A2)\n2,\n3,\n" });
    const english = athwart("audit", folder);
    const german = athwart("audit", folder, "--language", "de");
    expect(english.stdout).toContain("the range stops before Free!A3");
    expect(german.stdout.split("\n")).toHaveLength(english.stdout.split("\n").length);
    expect(german.stdout).toMatch(/^\d+ Fehler, \d+ Warnungen?, \d+ Hinweise?, 0 angenommen, in \d+ Formeln$/m);
    expect(german.stdout).toContain("zu kurzer Bereich: der Bereich endet vor");
    const record = athwart("audit", folder, "--record", "--language", "de").stdout;
    expect(record).toMatch(/^# Prüfprotokoll: Sample$/m);
    expect(record).toMatch(/^## Noch offen$/m);
    expect(record).toContain("| Stufe | Stelle | Regel | Befund |");
    expect(record).not.toMatch(/\b(Open|Accepted|Reviewed|formulas|Signature|Nothing)\b/);
  });

  it("names --language in the help, in both languages", () => {
    expect(athwart("--help").stdout).toContain("--language en|de: English, where nothing is said");
    const german = athwart("--help", "--language", "de").stdout;
    expect(german).toContain("Jeder Befehl nimmt --language en|de: Englisch, wo nichts gesagt ist");
    expect(german).toContain("calc ORDNER [--set Seite.Schlüssel@Variante=Wert]");
  });
});
