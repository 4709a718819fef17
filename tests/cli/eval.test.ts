import { describe, expect, it } from "vitest";
import { evaluate } from "../../src/cli/eval";
import { terminal } from "./terminal";

const lines = async (text: string): Promise<unknown[]> => {
  const output = terminal(text);
  await evaluate(output, [], true);
  return output
    .text()
    .split("\n")
    .filter(Boolean)
    .map((line) => JSON.parse(line));
};

describe("eval", () => {
  it("prints the value of one formula in full precision", async () => {
    const output = terminal();
    await evaluate(output, ["=CONDUCTOR.DROP(300, 10, 50)"], false);
    expect(output.text()).toBe("1.1580000000000001\n");
  });

  it("refuses with the error's sentence", async () => {
    await expect(evaluate(terminal(), ["=CONDUCTOR.DROP(-5, 10, 50)"], false)).rejects.toThrow(
      "#NUM! current: -5 A (allowed 0 to 5000 A)",
    );
  });

  it.each([[[]], [["=1", "=2"]]])("needs exactly one formula, not %j", async (formulas) => {
    await expect(evaluate(terminal(), formulas, false)).rejects.toThrow("eval takes one formula in quotation marks");
  });

  it("answers every line in order, the wrong ones too", async () => {
    expect(await lines('=1+1\r\n=CONDUCTOR.DROP(300,,50)\n\n="a"&"b"\n=TRUE\n={1,2;3,4}\n=1E-5\n')).toEqual([
      { formula: "=1+1", value: 2 },
      { formula: "=CONDUCTOR.DROP(300,,50)", error: "#VALUE!", message: "run: blank" },
      { formula: "", error: "#ERROR!", message: "a formula begins with =" },
      { formula: '="a"&"b"', value: "ab" },
      { formula: "=TRUE", value: true },
      {
        formula: "={1,2;3,4}",
        value: [
          [1, 2],
          [3, 4],
        ],
      },
      { formula: "=1E-5", value: 1e-5 },
    ]);
  });

  it("answers nothing for nothing", async () => {
    expect(await lines("")).toEqual([]);
  });
});
