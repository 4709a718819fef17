import { Refusal } from "../../notebook/refusal";
import { say } from "../../words/say";

/** A number that was typed, decimal comma or point; undefined for a blank field. @throws Refusal for anything else. */
export function typedNumber(name: string, text: string): number | undefined {
  const plain = text.trim().replace(",", ".");
  if (plain === "") return undefined;
  const value = Number(plain);
  if (!Number.isFinite(value))
    throw new Refusal(say`${name}: "${text}" is not a number; write it alone, without a unit.`);
  return value;
}

/** The same where a blank field will not do. */
export function neededNumber(name: string, text: string): number {
  const value = typedNumber(name, text);
  if (value === undefined) throw new Refusal(say`${name} is blank; write a number.`);
  return value;
}
