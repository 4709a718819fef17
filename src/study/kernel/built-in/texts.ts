import { say } from "../../../words/say";
import { asTest } from "../condition";
import { asNumber, failure, help, list, type Node, plain, select } from "../node";
import { isBlock, itemsOf, type Lowering, NotTaken, spread } from "../part";
import { kinds } from "../plain";

function formatted(value: Node, format: Node): Node {
  const text = format.op === "plain" ? format.value : undefined;
  if (typeof text !== "string") throw new NotTaken(say`TEXT takes its format from a cell`);
  if (text === "YYYY-MM-DD") return help("dateText", [asNumber(value)], kinds.text);
  if (!/^0(\.0+)?$/.test(text)) throw new NotTaken(say`TEXT with the format ${text}`);
  return help("digitsText", [asNumber(value), plain(Math.max(0, text.length - 2))], kinds.text);
}

const text: Lowering = ({ args }, { part }) => {
  if (args.length !== 2) throw new NotTaken(say`${"TEXT"} has ${args.length} arguments`);
  return spread(args.map(part), ([value = failure, format = failure]) => formatted(value, format));
};

const textJoin: Lowering = ({ args }, { part }) => {
  const [delimiter, leavesOut, ...parts] = args.map(part);
  if (!delimiter || !leavesOut || parts.length === 0)
    throw new NotTaken(say`${"TEXTJOIN"} has ${args.length} arguments`);
  if (isBlock(delimiter) || isBlock(leavesOut)) throw new NotTaken(say`TEXTJOIN with several delimiters`);
  const skip = select(asTest(leavesOut), plain(1), plain(0));
  return help("textJoin", [delimiter, skip, list(parts.flatMap(itemsOf))], kinds.text);
};

const dateValue: Lowering = ({ args }, { part }) => {
  if (args.length !== 1) throw new NotTaken(say`${"DATEVALUE"} has ${args.length} arguments`);
  return spread(args.map(part), (nodes) => help("dateValue", nodes, kinds.number));
};

export const textFunctions: Readonly<Record<string, Lowering>> = {
  DATEVALUE: dateValue,
  TEXT: text,
  TEXTJOIN: textJoin,
};
