/** More letters than this are not laid out outside a text field: a browser takes minutes over a word of 100,000. */
const most = 2000;

/** A text as it is shown; the field above the cells holds all of a longer one. */
export const startOf = (text: string): string => (text.length > most ? `${text.slice(0, most)} …` : text);
