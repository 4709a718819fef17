/** A text that counts, in the forms that a language has for one, few and many; `{0}` is the number. */
export type Forms = Readonly<Partial<Record<Intl.LDMLPluralRule, string>> & { other: string }>;

/**
 * Texts of another language by their English text. `{0}`, `{1}` stand for what is put in, in any order; a text that
 * counts is found under `row / rows`.
 */
export type Catalogue = Readonly<Record<string, string | Forms>>;
