import { type DecimalSign, decimalSign } from "../words/decimal-sign";
import { isLanguage, type Language, spoken } from "../words/language";

/** Where the browser keeps what a person chose; nothing is kept as long as the browser is followed. */
const places = { language: "athwart.language", decimal: "athwart.decimal-sign" } as const;

type Choice = keyof typeof places;

/** What was chosen, or an empty text where the browser is followed. */
export function kept(choice: Choice): string {
  try {
    return localStorage.getItem(places[choice]) ?? "";
  } catch {
    return "";
  }
}

/** Keeps a choice; an empty text follows the browser again. @returns whether it is kept. */
export function keep(choice: Choice, wanted: string): boolean {
  try {
    if (wanted === "") localStorage.removeItem(places[choice]);
    else localStorage.setItem(places[choice], wanted);
    return true;
  } catch {
    return false;
  }
}

/** The first language of the browser that there is a catalogue for. */
const browserLanguage = (): Language =>
  navigator.languages.map((one) => one.slice(0, 2).toLowerCase()).find(isLanguage) ?? "en";

export function chosenLanguage(): Language {
  const chosen = kept("language");
  return isLanguage(chosen) ? chosen : browserLanguage();
}

/** What the browser's own language puts before decimals; a sign that is neither of ours counts as a point. */
export function browserDecimalSign(): DecimalSign {
  const part = new Intl.NumberFormat(navigator.language).formatToParts(1.5).find(({ type }) => type === "decimal");
  return part?.value === "," ? "," : ".";
}

export function chosenDecimalSign(): DecimalSign {
  const chosen = kept("decimal");
  return chosen === "." || chosen === "," ? chosen : browserDecimalSign();
}

/** A worker that speaks as the page does: it reads its name before anything else. */
export const workerName = (): string => `${spoken().language} ${decimalSign()}`;
