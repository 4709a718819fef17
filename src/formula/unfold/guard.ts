import type { Argument } from "../arguments";

const text = (value: string): string => `"${value.replaceAll('"', '""')}"`;
const oneOf = (conditions: readonly string[]): string =>
  conditions.length === 1 ? (conditions[0] as string) : `OR(${conditions.join(",")})`;

/**
 * The conditions of a cell formula under which an argument is taken, as `checkArgument` judges it.
 *
 * @param cell the reference that stands for the argument.
 */
export function guardOf(argument: Argument, cell: string): readonly string[] {
  switch (argument.kind) {
    case "flag":
      return [`ISLOGICAL(${cell})`];
    case "text":
      return argument.choices
        ? [oneOf(argument.choices.map((choice) => `EXACT(${cell},${text(choice)})`))]
        : [`ISTEXT(${cell})`];
    case "key":
    case "range":
      throw new Error(`an argument of kind ${argument.kind} has no guard`);
    default: {
      const { min, max, aboveMin, whole, oneOf: sizes } = argument;
      return [
        `ISNUMBER(${cell})`,
        ...(min === undefined ? [] : [`${cell}${aboveMin ? ">" : ">="}${min}`]),
        ...(max === undefined ? [] : [`${cell}<=${max}`]),
        ...(whole ? [`INT(${cell})=${cell}`] : []),
        ...(sizes ? [oneOf(sizes.map((size) => `${cell}=${size}`))] : []),
      ];
    }
  }
}
