import type { Parsed } from "../../../engine/parsed";
import { say } from "../../../words/say";
import { asNumber, help, isNumber, list, math, type Node, plain, type Relation, type Sign } from "../node";
import { bare, type Home, isBlock, itemsOf, type Lowering, NotTaken, type Part } from "../part";
import { kinds } from "../plain";

const sign = (op: Sign, left: Node, right: Node): Node => ({ op: "sign", sign: op, left, right, kinds: kinds.number });

/** Values of one argument; those that stand in cells count only when they are numbers. */
interface Group {
  readonly items: readonly Node[];
  readonly fromCells: boolean;
  /** A block that is written as such is added up by itself, then joined to the others. */
  readonly apart: boolean;
}

function groups(args: readonly Parsed[], { part }: Home): readonly Group[] {
  if (args.length === 0) throw new NotTaken(say`a sum without arguments`);
  return args.map((arg) => {
    const found = arg.kind === "range" ? wholeBlock(part(arg)) : part(arg);
    const fromCells = isBlock(found) || arg.kind === "reference";
    const items = itemsOf(found);
    return { items: fromCells ? items : items.map(asNumber), fromCells, apart: arg.kind === "range" };
  });
}

/** A block of one cell is handed on as that cell; here it is still a block. */
const wholeBlock = (part: Part): Part => (isBlock(part) ? part : { rows: [[part]] });

/** Numbers put together from left to right, beginning with `start` where there is one. */
function chained(op: "+" | "*", group: Group, start: Node | undefined): Node {
  if (group.items.every(isNumber) && group.items.length > 0) {
    const [first, ...rest] = start ? [start, ...group.items] : group.items;
    return rest.reduce((sum, item) => sign(op, sum, item), first as Node);
  }
  const neutral = plain(op === "+" ? 0 : 1);
  return help(op === "+" ? "sumOf" : "productOf", [list(group.items), start ?? neutral], kinds.number);
}

const folded =
  (op: "+" | "*") =>
  (all: readonly Group[]): Node => {
    const total = all.reduce<Node | undefined>((sum, group) => {
      if (!group.apart) return chained(op, group, sum);
      const own = chained(op, group, undefined);
      return sum ? sign(op, own, sum) : own;
    }, undefined);
    return total ?? plain(0);
  };

const total = folded("+");
const product = folded("*");

function extreme(name: "min" | "max", all: readonly Group[]): Node {
  const items = all.flatMap((group) => group.items);
  if (items.every(isNumber) && items.length > 0) return math(name, ...items);
  return help(name === "min" ? "leastOf" : "mostOf", [list(items)], kinds.number);
}

const count = (all: readonly Group[]): Node =>
  help("countOf", [list(all.flatMap((group) => group.items))], kinds.number);

const grouped =
  (make: (all: readonly Group[]) => Node): Lowering =>
  ({ args }, home) =>
    make(groups(args, home));

/** Counts over everything as it stands, without reading numbers into it. */
const asTheyStand =
  (name: string): Lowering =>
  ({ args }, { part }) =>
    help(name, [list(args.flatMap((arg) => itemsOf(part(arg))))], kinds.number);

/** Cells that are never blank, such as the results of formulas, need not be looked at every time. */
const blanks: Lowering = ({ args }, { part }) => {
  const items = args.flatMap((arg) => itemsOf(part(arg)));
  const always = items.filter((item) => item.op === "plain" && item.value === null).length;
  const perhaps = items.filter((item) => item.op !== "plain" && (item.kinds & kinds.blank) !== 0);
  if (perhaps.length === 0) return plain(always);
  return sign("+", plain(always), help("blanksOf", [list(perhaps)], kinds.number));
};

const criterionParts = /^(<=|>=|<>|<|>|=)?([^<>=]*)$/;

const countIf: Lowering = ({ args }, { part }) => {
  const [block, criterion] = args.map(part);
  if (!block || !isBlock(block) || !criterion || args.length !== 2) throw new NotTaken(say`COUNTIF looks at no block`);
  if (isBlock(criterion) || criterion.op !== "plain") throw new NotTaken(say`COUNTIF takes its criterion from a cell`);
  const { value } = criterion;
  const items = list(itemsOf(block));
  if (typeof value === "number") return help("countIf", [items, plain("="), plain(value)], kinds.number);
  const parts = typeof value === "string" ? criterionParts.exec(value) : null;
  const [, relation = "=", wanted = ""] = parts ?? [];
  if (/^-?\d+(\.\d+)?$/.test(wanted)) {
    return help("countIf", [items, plain(relation as Relation), plain(Number(wanted))], kinds.number);
  }
  const words = /^\p{L}[\p{L} ]*$/u.test(wanted) && !/^(true|false)$/i.test(wanted);
  if (!words || (relation !== "=" && relation !== "<>"))
    throw new NotTaken(say`COUNTIF with the criterion ${String(value)}`);
  const plainWords = wanted
    .toLowerCase()
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "");
  return help("countWords", [items, plain(plainWords), plain(relation === "=")], kinds.number);
};

const lines =
  (size: (rows: number, columns: number) => number): Lowering =>
  ({ name, args }) => {
    const tree = args[0] && bare(args[0]);
    if (args.length === 1 && tree?.kind === "reference") return plain(1);
    if (args.length !== 1 || tree?.kind !== "range") throw new NotTaken(say`${name} of something that is no block`);
    return plain(size(tree.to.row - tree.from.row + 1, tree.to.column - tree.from.column + 1));
  };

export const aggregateFunctions: Readonly<Record<string, Lowering>> = {
  AVERAGE: grouped((all) => sign("/", total(all), count(all))),
  COLUMNS: lines((_, columns) => columns),
  COUNT: grouped(count),
  COUNTA: asTheyStand("filledOf"),
  COUNTBLANK: blanks,
  COUNTIF: countIf,
  MAX: grouped((all) => extreme("max", all)),
  MIN: grouped((all) => extreme("min", all)),
  PRODUCT: grouped(product),
  ROWS: lines((rows) => rows),
  SUM: grouped(total),
};
