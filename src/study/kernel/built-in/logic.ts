import type { Parsed } from "../../../engine/parsed";
import { say } from "../../../words/say";
import { asTest } from "../condition";
import { failure, help, list, type Node, plain, select, type Test } from "../node";
import { type Home, isBlock, itemsOf, type Lowering, NotTaken, spread } from "../part";
import { kinds } from "../plain";

const flag = (test: Test): Node => ({ op: "flag", test, kinds: kinds.flag });

const conditional: Lowering = ({ args }, { part }) => {
  if (args.length < 2 || args.length > 3) throw new NotTaken(say`${"IF"} has ${args.length} arguments`);
  return spread(args.map(part), ([test = failure, then = failure, otherwise = plain(false)]) =>
    select(asTest(test), then, otherwise),
  );
};

function tests(args: readonly Parsed[], { part }: Home, ofBlock: string): readonly Test[] {
  if (args.length === 0) throw new NotTaken(say`a condition without arguments`);
  return args.map((arg) => {
    const one = part(arg);
    // Among cells of a block, words are passed over.
    return isBlock(one) ? { test: "help", name: ofBlock, args: [list(itemsOf(one))] } : asTest(one);
  });
}

/** A question about the kind of one value; an error is an answer like any other. */
const question =
  (name: string, wanted = true): Lowering =>
  ({ name: fn, args }, { part }) => {
    if (args.length !== 1) throw new NotTaken(say`${fn} has ${args.length} arguments`);
    return spread(args.map(part), (nodes) => {
      const [value] = (help(name, nodes, kinds.number) as Extract<Node, { op: "help" }>).args;
      const test: Test = { test: "help", name, args: value ? [value] : [] };
      return flag(wanted ? test : { test: "not", of: test });
    });
  };

const ifError: Lowering = ({ args }, { part }) => {
  if (args.length !== 2) throw new NotTaken(say`${"IFERROR"} has ${args.length} arguments`);
  return spread(args.map(part), (nodes) =>
    help(
      "ifError",
      nodes,
      nodes.reduce((sum, node) => sum | node.kinds, 0),
    ),
  );
};

const exact: Lowering = ({ args }, { part }) => {
  if (args.length !== 2) throw new NotTaken(say`${"EXACT"} has ${args.length} arguments`);
  return spread(args.map(part), (nodes) => flag({ test: "help", name: "exact", args: nodes }));
};

export const logicFunctions: Readonly<Record<string, Lowering>> = {
  AND: ({ args }, home) => flag({ test: "all", of: tests(args, home, "allOf") }),
  EXACT: exact,
  IF: conditional,
  IFERROR: ifError,
  ISBLANK: question("isBlank"),
  ISERROR: question("isError"),
  ISLOGICAL: question("isFlag"),
  ISNONTEXT: question("isText", false),
  ISNUMBER: question("isNumber"),
  ISTEXT: question("isText"),
  NA: () => failure,
  NOT: ({ args }, { part }) => {
    if (args.length !== 1) throw new NotTaken(say`${"NOT"} has ${args.length} arguments`);
    return spread(args.map(part), ([node = failure]) => flag({ test: "not", of: asTest(node) }));
  },
  OR: ({ args }, home) => flag({ test: "some", of: tests(args, home, "someOf") }),
};
