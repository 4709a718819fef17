import type { SimpleCellAddress } from "hyperformula";
import type { Operator, Parsed, ParsedCell } from "./parsed";
import { mostColumns, mostRows } from "./settings";

interface Located {
  readonly toSimpleCellAddress?: (at: SimpleCellAddress) => SimpleCellAddress;
  readonly toSimpleColumnAddress?: (at: SimpleCellAddress) => { readonly sheet: number; readonly col: number };
  readonly toSimpleRowAddress?: (at: SimpleCellAddress) => { readonly sheet: number; readonly row: number };
}

/** The fields of the engine's own nodes that are read here; all of them private to it. */
export interface Node {
  readonly type: string;
  readonly value?: unknown;
  readonly left?: Node;
  readonly right?: Node;
  readonly expression?: Node;
  readonly args?: readonly Node[] | readonly (readonly Node[])[];
  readonly procedureName?: string;
  readonly expressionName?: string;
  readonly reference?: Located;
  readonly start?: Located;
  readonly end?: Located;
  readonly rawInput?: string;
  readonly error?: { readonly type?: string };
}

const operators: Readonly<Record<string, Operator>> = {
  PLUS_OP: "+",
  MINUS_OP: "-",
  TIMES_OP: "*",
  DIV_OP: "/",
  POWER_OP: "^",
  CONCATENATE_OP: "&",
  EQUALS_OP: "=",
  NOT_EQUAL_OP: "<>",
  LESS_THAN_OP: "<",
  LESS_THAN_OR_EQUAL_OP: "<=",
  GREATER_THAN_OP: ">",
  GREATER_THAN_OR_EQUAL_OP: ">=",
};

const signs: Readonly<Record<string, "-" | "+" | "%">> = {
  MINUS_UNARY_OP: "-",
  PLUS_UNARY_OP: "+",
  PERCENT_OP: "%",
};

export const unreadable = (text: string): Parsed => ({ kind: "unreadable", text });

/** Where a formula stands, and how many sheets there are: the engine keeps a number for a missing one. */
export interface Home {
  readonly cell: SimpleCellAddress;
  readonly sheets: number;
}

function cellOf(located: Located | undefined, at: Home): ParsedCell | undefined {
  const found = located?.toSimpleCellAddress?.(at.cell);
  if (!found || !(found.row >= 0 && found.col >= 0 && found.sheet < at.sheets)) return undefined;
  return { sheet: found.sheet, row: found.row, column: found.col };
}

function rangeOf(node: Node, at: Home): Parsed {
  if (node.type === "COLUMN_RANGE") {
    const [from, to] = [node.start?.toSimpleColumnAddress?.(at.cell), node.end?.toSimpleColumnAddress?.(at.cell)];
    if (!from || !to || from.sheet >= at.sheets) return unreadable("#REF!");
    return {
      kind: "range",
      from: { sheet: from.sheet, row: 0, column: from.col },
      to: { sheet: from.sheet, row: mostRows - 1, column: to.col },
    };
  }
  if (node.type === "ROW_RANGE") {
    const [from, to] = [node.start?.toSimpleRowAddress?.(at.cell), node.end?.toSimpleRowAddress?.(at.cell)];
    if (!from || !to || from.sheet >= at.sheets) return unreadable("#REF!");
    return {
      kind: "range",
      from: { sheet: from.sheet, row: from.row, column: 0 },
      to: { sheet: from.sheet, row: to.row, column: mostColumns - 1 },
    };
  }
  const [from, to] = [cellOf(node.start, at), cellOf(node.end, at)];
  return from && to ? { kind: "range", from, to } : unreadable("#REF!");
}

function callOf(node: Node, at: Home): Parsed {
  const name = node.procedureName ?? "";
  const args = ((node.args ?? []) as readonly Node[]).map((one) => parsedNode(one, at));
  if (args.length === 0 && (name === "TRUE" || name === "FALSE")) return { kind: "flag", value: name === "TRUE" };
  return { kind: "call", name, args };
}

/** A formula tree of the engine as one of ours. */
export function parsedNode(node: Node | undefined, at: Home): Parsed {
  if (!node) return unreadable("");
  const op = operators[node.type];
  if (op) return { kind: "operator", op, left: parsedNode(node.left, at), right: parsedNode(node.right, at) };
  const sign = signs[node.type];
  if (sign) return { kind: "sign", op: sign, of: parsedNode(node.value as Node, at) };
  switch (node.type) {
    case "EMPTY":
      return { kind: "blank" };
    case "NUMBER":
      return { kind: "number", value: Number(node.value) };
    case "STRING":
      return { kind: "text", text: String(node.value) };
    case "PARENTHESES":
      return { kind: "brackets", of: parsedNode(node.expression, at) };
    case "FUNCTION_CALL":
      return callOf(node, at);
    case "NAMED_EXPRESSION": {
      const name = node.expressionName ?? "";
      const upper = name.toUpperCase();
      return upper === "TRUE" || upper === "FALSE" ? { kind: "flag", value: upper === "TRUE" } : { kind: "name", name };
    }
    case "CELL_REFERENCE": {
      const cell = cellOf(node.reference, at);
      return cell ? { kind: "reference", at: cell } : unreadable("#REF!");
    }
    case "CELL_RANGE":
    case "COLUMN_RANGE":
    case "ROW_RANGE":
      return rangeOf(node, at);
    case "ARRAY":
      return {
        kind: "array",
        rows: ((node.args ?? []) as readonly (readonly Node[])[]).map((row) => row.map((one) => parsedNode(one, at))),
      };
    default:
      return unreadable(node.rawInput ?? (node.error?.type ? `#${node.error.type}!` : ""));
  }
}
