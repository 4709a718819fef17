import type { Catalogue } from "./catalogue";

/** The languages of the screen, each by its own name. A new one needs its catalogue and a line here. */
export const languageNames = { en: "English", de: "Deutsch" } as const;

export type Language = keyof typeof languageNames;

export const isLanguage = (text: string): text is Language => Object.hasOwn(languageNames, text);

interface Spoken {
  readonly language: Language;
  readonly catalogue: Catalogue;
  readonly plural: Intl.PluralRules;
}

let now: Spoken = { language: "en", catalogue: {}, plural: new Intl.PluralRules("en") };

const catalogues: Readonly<Record<Language, () => Promise<Catalogue>>> = {
  en: async () => ({}),
  de: async () => (await import("./german/index")).german,
};

/**
 * Speaks another language from now on; its catalogue is fetched for it. Texts that were made before stay as they are,
 * so this comes first where a program, a page or a worker begins.
 */
export async function speak(language: Language): Promise<void> {
  now = { language, catalogue: await catalogues[language](), plural: new Intl.PluralRules(language) };
}

/** What is spoken now. */
export const spoken = (): Spoken => now;
