import { inOrder } from "../formula/call";
import type { AnyDefinition } from "../formula/definition";
import { sourceLine } from "../formula/source";
import type { Given } from "../formula/value";
import type { Row } from "./model";

const header = ["Function", "Given", "Result", "Expected", "Within", "Verdict", "Evidence", "Source"] as const;

const literal = (value: Given): string => {
  if (value === null) return "";
  if (typeof value === "object") return `{${value.map(literal).join(",")}}`;
  if (typeof value === "string") return `"${value.replaceAll('"', '""')}"`;
  return String(value).toUpperCase().replace("E", "e");
};

/** The call of an example as a formula; what is left out at the end stays out. */
export function exampleFormula(definition: AnyDefinition, given: Readonly<Record<string, unknown>>): string {
  const names = Object.keys(definition.args);
  const last = names.findLastIndex((name) => given[name] !== undefined);
  const values = inOrder(definition, given).slice(0, last + 1);
  return `=${definition.name}(${values.map(literal).join(",")})`;
}

/** Digits in which a result is printed; a cell takes as many from anybody. */
const digits = 15;

function expected(value: number | string | boolean): string {
  if (typeof value === "string") return `'${value}`;
  return typeof value === "number" ? String(Number(value.toPrecision(digits))) : String(value).toUpperCase();
}

function exampleRow(definition: AnyDefinition, example: AnyDefinition["examples"][number], line: number): Row {
  const given = Object.entries(example.given)
    .map(([name, value]) => `${name} ${Array.isArray(value) ? value.join(" ") : String(value)}`)
    .join(", ");
  const formula = exampleFormula(definition, example.given);
  const close = typeof example.expect === "number" ? `ABS(C${line}-D${line})<=E${line}` : `C${line}=D${line}`;
  return [
    definition.name,
    given,
    formula,
    expected(example.expect),
    String(example.within),
    `=IF(ISERROR(C${line}),"differs",IF(${close},"agrees","differs"))`,
    example.source.evidence,
    sourceLine(example.source),
  ];
}

/** The page Proof: every example of every named function, calculated live and held against its source. */
export function proofRows(catalogue: readonly AnyDefinition[]): Row[] {
  const first = 3;
  const examples = catalogue.flatMap((definition) => definition.examples.map((example) => ({ definition, example })));
  const last = first + examples.length - 1;
  const summary = `=COUNTIF(F${first}:F${last},"agrees")&" of "&ROWS(F${first}:F${last})&" agree"`;
  return [
    [...header],
    ["All functions", "", "", "", "", summary, "", ""],
    ...examples.map(({ definition, example }, i) => exampleRow(definition, example, first + i)),
  ];
}
