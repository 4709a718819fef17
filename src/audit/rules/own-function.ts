import { nameOnPage } from "../../notebook/cell-name";
import { pageByName } from "../../notebook/model";
import { whyItFails } from "../../notebook/own/example-holds";
import { part } from "../../notebook/own/function-page";
import type { OwnFunction } from "../../notebook/own/own-function";
import { ownFunctions } from "../../notebook/own/own-functions";
import { say } from "../../words/say";
import { type Finding, found, type Severity } from "../finding";
import type { Rule } from "../rule";
import { definitionFindings } from "../units/definition";

const name = "own-function";

interface Said {
  readonly severity: Severity;
  readonly row: number;
  readonly column: number;
  readonly message: string;
}

function saidOf({ name: fn, row, definition, mistakes, exampleRows, withoutSource }: OwnFunction): Said[] {
  if (!definition) {
    return mistakes.map(({ row: line, sentence }) => ({
      severity: "error",
      row: line,
      column: part.part,
      message: sentence,
    }));
  }
  const failing = definition.examples.flatMap((example, i): Said[] => {
    const why = whyItFails(definition, example);
    const line = exampleRows[i] ?? row;
    return why ? [{ severity: "error", row: line, column: part.formula, message: `${fn}: ${why}` }] : [];
  });
  const units = definitionFindings(definition).map(
    ({ level, message }): Said => ({ severity: level, row, column: part.name, message: `${fn}, ${message}` }),
  );
  const sources = withoutSource.map(
    (line): Said => ({
      severity: "warning",
      row: line,
      column: part.source,
      message: say`${fn}: no source is named; write where it comes from, or "common practice, no source: …"`,
    }),
  );
  const none = say`${fn} has no example that it is held to; add a row example`;
  return [
    ...failing,
    ...units,
    ...sources,
    ...(definition.examples.length > 0 ? [] : [{ severity: "note", row, column: part.name, message: none } as const]),
  ];
}

/** Mistakes in the functions that a notebook defines itself: what cannot be read, examples that fail, units, sources. */
export const ownFunction: Rule = {
  name,
  about: say`a function of the notebook's own with a mistake, an example that fails, units that do not fit, or no source`,
  find: ({ notebook }) =>
    ownFunctions(notebook).flatMap((one): Finding[] => {
      const page = pageByName(notebook, one.page);
      if (!page) return [];
      return saidOf(one).map(({ severity, row, column, message }) =>
        found(name, severity, nameOnPage(page, row, column), message),
      );
    }),
};
