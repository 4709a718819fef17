import type { Notebook, Row } from "../../src/notebook/model";
import { hostile } from "../hostile/strings";

const at = (i: number): string => hostile[i % hostile.length] as string;
// Braces name a drawn number in a question, and a choice ends at a semicolon.
const plain = (i: number): string => at(i).replace(/[{};]/g, "");
const header: Row = ["Part", "Name", "Unit", "Text", "How", "Within", "Advice"];

/** A task whose texts are hostile, each in its turn, beginning with one of them. */
const task = (i: number): readonly Row[] => [
  header,
  ["question", "", "", `{area} ${plain(i)}`, "", "", ""],
  ["drawn", "area", "m2", plain(i + 1), "10 to 30 by 0.5", "", ""],
  ["drawn", "pressure", "Pa", plain(i + 2), "40 to 90", "", ""],
  ["answer", "push", "N", plain(i + 3), "area*pressure", "1 %", ""],
  ["mistake", "push", "", plain(i + 4), "pressure/area", "", plain(i + 5)],
  ["answer", "verdict", "", plain(i + 6), 'IF(push>1200,"much","little")', "one of much; little; stop", ""],
  ["mistake", "verdict", "", plain(i + 7), 'IF(push>1200,"little","much")', "", plain(i + 8)],
  ["hint", "", "", plain(i + 9), "", "", ""],
  ["rule", "", "", plain(i + 10), "", "", ""],
  ["source", "", "", plain(i + 11), "", "", ""],
  ["beyond", "", "", plain(i + 12), "", "", ""],
  ["caution", "", "", plain(i + 13), "", "", ""],
];

const pages = Array.from({ length: 6 }, (_, i) => {
  const name = plain(11 * i + 2).slice(0, 200);
  return { id: `task-${i}`, name, file: `task-${i}.csv`, rows: task(11 * i) };
});

/** A course whose tasks hold the hostile texts, every one of them somewhere. */
export const hostileCourse: Notebook = {
  about: {
    version: 1,
    title: at(46),
    pages: pages.map(({ name, file }) => ({ name, file, kind: "task" })),
    settings: { edition: at(46) },
  },
  pages,
};
