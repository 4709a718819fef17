/** What a name of a task stands for: a number or words. */
export type Scalar = number | string;
