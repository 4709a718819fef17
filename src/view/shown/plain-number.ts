import { plainNumberOf } from "../../engine/content";
import { withDecimalSign } from "../../words/decimal-sign";

/** A text as it is read on the screen: with the person's decimal sign where it is a number and nothing else. */
export const asShown = (text: string): string => (plainNumberOf(text) === undefined ? text : withDecimalSign(text));
