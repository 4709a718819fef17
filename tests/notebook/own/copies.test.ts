import { describe, expect, it } from "vitest";
import { definitionFindings } from "../../../src/audit/units/definition";
import { callFunction } from "../../../src/formula/call";
import { Fault } from "../../../src/formula/fault";
import type { Given } from "../../../src/formula/value";
import { catalogue } from "../../../src/functions";
import { readNotebook, writeNotebook } from "../../../src/notebook/files";
import { copyFunction } from "../../../src/notebook/own/add-function";
import { ownFunctions } from "../../../src/notebook/own/own-functions";
import { anyArguments } from "../../formula/any-arguments";
import { seeded } from "../../formula/random-expression";
import { sample } from "../sample";

function answer(one: (typeof catalogue)[number], given: readonly Given[]): unknown {
  try {
    return callFunction(one, given);
  } catch (problem) {
    // A sentence that begins with the function says its own name.
    if (problem instanceof Fault) return problem.sentence.replace(/^[A-Z.]+: /, "");
    throw problem;
  }
}

describe("a copy of every shipped function under another name", () => {
  const copied = catalogue.reduce(
    (notebook, one) => copyFunction(notebook, one, `YARD.${one.name.replace(".", "")}`).notebook,
    sample(),
  );
  // What is tested is what comes back from the files.
  const own = ownFunctions(readNotebook(writeNotebook(copied)));

  it("reads back without a mistake, with a source on every row that needs one", () => {
    expect(own.map(({ mistakes }) => mistakes[0]).filter(Boolean)).toEqual([]);
    expect(own.length).toBe(catalogue.length);
    expect(own.flatMap(({ withoutSource }) => withoutSource)).toEqual([]);
  });

  it.each(catalogue.map((one, i) => ({ name: one.name, one, i })))(
    "$name: same bits, same sentences, same units, same examples",
    ({ one, i }) => {
      const copy = own[i]?.definition;
      if (!copy) throw new Error("no copy");
      const random = seeded(i + 1);
      for (let n = 0; n < 30; n++) {
        const given = anyArguments(random, one, n % 3 === 0 ? 0.3 : 0);
        expect(answer(copy, given)).toEqual(answer(one, given));
      }
      expect(definitionFindings(copy)).toEqual(definitionFindings(one));
      expect(copy.examples.map(({ given, expect: wanted, within }) => ({ given, wanted, within }))).toEqual(
        one.examples.map(({ given, expect: wanted, within }) => ({ given, wanted, within })),
      );
      expect(copy.ownOf).toBe("Own functions");
    },
  );
});
