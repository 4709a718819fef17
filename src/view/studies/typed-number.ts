import { plainNumberOf } from "../../engine/content";
import { Refusal } from "../../notebook/refusal";
import { say } from "../../words/say";
import { readTyped } from "../typing/typed-text";

/** A number that was typed; undefined for a blank field. @throws Refusal for anything else, and for what reads two ways. */
export function typedNumber(name: string, text: string): number | undefined {
  if (text.trim() === "") return undefined;
  const read = readTyped(text.trim());
  if (read.kind === "ask") {
    throw new Refusal(say`${name}: "${text}" can be read two ways; write it without a sign between thousands.`);
  }
  const value = plainNumberOf(read.text);
  if (value === undefined) {
    throw new Refusal(say`${name}: "${text}" is not a number; write it alone, without a unit.`);
  }
  return value;
}

/** The same where a blank field will not do. */
export function neededNumber(name: string, text: string): number {
  const value = typedNumber(name, text);
  if (value === undefined) throw new Refusal(say`${name} is blank; write a number.`);
  return value;
}
