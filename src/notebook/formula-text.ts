import type { Operator, Parsed, ParsedCell } from "../engine/parsed";

/** How the parts of a formula are written; brackets stay where they were typed. */
export interface FormulaStyle {
  readonly reference: (at: ParsedCell) => string;
  readonly range: (from: ParsedCell, to: ParsedCell) => string;
  readonly number: (value: number) => string;
  readonly operator: (op: Operator) => string;
  readonly minus: string;
  /** Stands between the arguments of a call. */
  readonly comma: string;
}

/** Operators as a reader knows them. */
export const readerOperator = (op: Operator): string => {
  const signs: Partial<Record<Operator, string>> = { "-": "−", "*": "×", "<>": "≠", "<=": "≤", ">=": "≥" };
  return op === "^" ? "^" : ` ${signs[op] ?? op} `;
};

/** Writes a formula (without `=`) in a style. */
export function formulaText(parsed: Parsed, style: FormulaStyle): string {
  const write = (one: Parsed): string => formulaText(one, style);
  switch (parsed.kind) {
    case "number":
      return style.number(parsed.value);
    case "text":
      return `"${parsed.text.replaceAll('"', '""')}"`;
    case "flag":
      return parsed.value ? "TRUE" : "FALSE";
    case "blank":
      return "";
    case "reference":
      return style.reference(parsed.at);
    case "range":
      return style.range(parsed.from, parsed.to);
    case "call":
      return `${parsed.name}(${parsed.args.map(write).join(style.comma)})`;
    case "operator":
      return `${write(parsed.left)}${style.operator(parsed.op)}${write(parsed.right)}`;
    case "sign":
      if (parsed.op === "%") return `${write(parsed.of)}%`;
      return `${parsed.op === "-" ? style.minus : "+"}${write(parsed.of)}`;
    case "brackets":
      return `(${write(parsed.of)})`;
    case "array":
      return `{${parsed.rows.map((row) => row.map(write).join(",")).join(";")}}`;
    case "name":
      return parsed.name;
    case "unreadable":
      return parsed.text || "#REF!";
  }
}
