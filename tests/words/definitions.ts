import type { Table } from "../../src/formula/table";
import { catalogue, families } from "../../src/functions";

/** `halfBreadth` is said as `half breadth`. */
const spelt = (name: string): string => name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

const isTable = (value: unknown): value is Table =>
  typeof value === "object" && value !== null && "rows" in value && "columns" in value && "key" in value;

/** The tables that a step reads, wherever it names them. */
function tablesIn(value: unknown): Table[] {
  if (isTable(value)) return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(tablesIn) : [];
}

/** Letters that are written as such: `T20`, `alpha`. */
const greek =
  /^(alpha|beta|gamma|delta|epsilon|zeta|eta|theta|kappa|lambda|mu|nu|xi|rho|sigma|tau|phi|chi|psi|omega|pi)$/;

/** The words that a name of the mathematics is made of; nothing for a letter. */
function symbolTexts(name: string): string[] {
  const [, stem = name] = /^([A-Za-z]+?)_?(\d+)$/.exec(name) ?? /^([A-Za-z]+)_(\w+)$/.exec(name) ?? [];
  return /^[a-z]./.test(stem) && !greek.test(stem) ? [spelt(stem)] : [];
}

const tableTexts = (table: Table): string[] => [
  table.title,
  table.key.about,
  ...Object.values(table.columns).flatMap(({ about }) => (about === undefined ? [] : [about])),
];

/** All texts of the named functions and their tables that are data and are said where they are shown. */
export function definitionTexts(): readonly string[] {
  const texts = catalogue.flatMap((definition) => [
    definition.title,
    definition.valid,
    definition.caution ?? "",
    ...Object.entries(definition.args).flatMap(([name, { about }]) => [spelt(name), about]),
    ...Object.values(definition.constants ?? {}).map(({ about }) => about),
    ...Object.keys(definition.constants ?? {}).flatMap(symbolTexts),
    ...definition.steps.flatMap((step) => [
      ...("symbol" in step ? symbolTexts(step.symbol) : []),
      ...tablesIn(step).flatMap(({ key, columns }) => [key.name, ...Object.keys(columns)].flatMap(symbolTexts)),
      "why" in step ? step.why : "",
      "says" in step ? step.says : "",
      ...tablesIn(step).flatMap(tableTexts),
    ]),
  ]);
  return [...new Set([...Object.keys(families), ...texts])].filter((text) => text !== "");
}
