import type { Argument } from "../../formula/arguments";
import type { AnyDefinition } from "../../formula/definition";
import type { Source } from "../../formula/source";
import { say } from "../../words/say";
import type { Row } from "../model";
import { argumentTexts, scanCalls } from "../scan-calls";
import { part } from "./function-page";
import { literalOf } from "./limits-text";
import { RowMistake } from "./read-rows";

export type OwnExample = AnyDefinition["examples"][number];

function givenOf(text: string): unknown {
  const block = /^\{(.*)\}$/.exec(text)?.[1];
  if (block !== undefined) return block.split(/[,;]/).map((one) => literalOf(one.trim()));
  return literalOf(text);
}

/**
 * `example`: what is given, in the order of the arguments, as in `300, 10, 50`; in the column Limits what comes out, as in
 * `1.158 ± 0.0005`; source.
 */
export function readExample(row: Row, args: Readonly<Record<string, Argument>>, source: Source): OwnExample {
  const text = `F(${row[part.formula] ?? ""})`;
  const [call] = scanCalls(text);
  const given = call ? argumentTexts(text, call) : [];
  const names = Object.keys(args);
  if (given.length > names.length)
    throw new RowMistake(say`example: takes ${names.length} arguments, got ${given.length}`);
  const values = given.map((one, i) => {
    const value = one === "" ? undefined : givenOf(one);
    if (one !== "" && value === undefined) {
      throw new RowMistake(
        say`example: "${one}" for ${names[i] ?? ""} is no number, text in quotation marks, TRUE or FALSE`,
      );
    }
    return [names[i] as string, value] as const;
  });
  const [expected = "", within = "0"] = (row[part.limits] ?? "").split(/\s*(?:±|\+-|\+\/-)\s*/);
  const expect = literalOf(expected.trim());
  const tolerance = Number(within);
  if (expect === undefined || !(tolerance >= 0)) {
    throw new RowMistake(say`example: write in the column Limits what comes out, as in 1.158 ± 0.0005`);
  }
  return {
    given: Object.fromEntries(values.filter(([, value]) => value !== undefined)),
    expect,
    within: tolerance,
    source,
  };
}
