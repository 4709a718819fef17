import { expect, it } from "vitest";
import { catalogue } from "../../../src/functions";
import { callBySteps } from "../../../src/study/kernel/named";
import type { Plain } from "../../../src/study/kernel/plain";
import { written } from "../../../src/study/kernel/written";
import { anyArguments } from "../../formula/any-arguments";
import { seeded } from "../../formula/random-expression";

it("the build writes every named function as plain code", () => {
  expect([...written.keys()]).toEqual(catalogue.map(({ name }) => name));
});

it("the plain code and the functions' own steps give the same bits, refusals as NaN", () => {
  const random = seeded(99);
  for (const definition of catalogue) {
    const count = Object.keys(definition.args).length;
    let given: readonly (Plain | readonly Plain[])[] = [];
    const call = callBySteps(
      definition,
      Array.from({ length: count }, (_, i) => () => given[i] as Plain),
      Array.from({ length: count }, () => false),
    );
    for (let i = 0; i < 60; i++) {
      given = anyArguments(random, definition, i % 3 === 0 ? 0.3 : 0);
      const [plain, steps] = [written.get(definition.name)?.(...given), call()];
      if (!Object.is(plain, steps))
        expect({ name: definition.name, given, plain }).toEqual({ name: definition.name, given, plain: steps });
    }
  }
});
