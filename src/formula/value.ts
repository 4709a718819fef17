/** What a step works on: a number, a text key, a flag, or the numbers of a range. */
export type Value = number | string | boolean | readonly number[];

/** What a cell hands to a function: blank is `null`, a range of cells is a list. */
export type Given = number | string | boolean | null | readonly (number | string | boolean | null)[];

/** What a function answers. */
export type Answer = number | string | boolean;
