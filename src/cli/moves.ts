import { displayNumber } from "../notebook/display";
import { finish } from "../study/carry-out";
import { type Move, type MovesAnswer, moves } from "../study/moves";
import { movesCsv } from "../study/moves-csv";
import { quantityWords, valueWords } from "../study/words";
import { say } from "../words/say";
import { columns, Misuse, type Output } from "./output";
import { openStudy, whyLine } from "./study";

const shown = (value: number | undefined): string =>
  value === undefined ? "" : Number.isNaN(value) ? say`no result` : displayNumber(value);

const ends = ({ low, high, unit }: Move): string =>
  low === undefined || high === undefined ? "" : say`${valueWords(low, "")} to ${valueWords(high, unit)}`;

function movesText({ result, unit, now, moves: found, still }: MovesAnswer): string {
  const head = [say`Input`, say`Now`, say`Tried`, say`Result there`, say`Change`, say`For 1 % more`, ""];
  const rows = found.map((move) => [
    `${move.name} (${move.quantity})`,
    valueWords(move.value, move.unit),
    ends(move),
    move.atLow === undefined ? "" : say`${shown(move.atLow)} to ${shown(move.atHigh)}`,
    shown(move.over),
    shown(move.percent),
    move.note,
  ]);
  const rest = still.length === 0 ? "" : `${say`Move nothing: ${still.join(", ")}.`}\n`;
  const table = columns([head, ...rows], (column) => column === 4 || column === 5);
  return `${say`${result} is ${quantityWords(now, unit)}. Each input by itself, the rest as in the notebook:`}\n\n${table}\n${rest}`;
}

/** `moves FOLDER Estimate.price_80@Cruiser`: every input of a result, by how much it moves it. */
export function whatMoves(output: Output, args: readonly string[], wishes: { csv: boolean; json: boolean }): void {
  const [folder, address, ...more] = args;
  if (folder === undefined || address === undefined || more.length > 0) {
    throw new Misuse(
      say`moves takes a folder and a result, for example moves sheets/three-hulls Estimate.price_80@Cruiser.`,
    );
  }
  const { subject, runner } = openStudy(output, folder, address);
  if (subject.results.length !== 1) throw new Misuse(say`${address}: name one result, not ${subject.results.length}.`);
  const answer = finish(moves(subject, runner, 0));
  if (wishes.json) output.write(`${JSON.stringify(answer, undefined, 2)}\n`);
  else output.write(wishes.csv ? movesCsv(answer) : `${whyLine(runner)}${movesText(answer)}`);
}
