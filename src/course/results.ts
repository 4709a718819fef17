import type { Row } from "../notebook/model";
import { printPage } from "../notebook/page-csv";
import { say } from "../words/say";
import type { ClassEntry } from "./class-list";
import { harmless } from "./class-table";
import { type Mark, markWordsOf } from "./mark";
import type { MarkedFile } from "./trainee-file";

/** How often an answer of the class came out in one way. */
export interface Tally {
  readonly task: number;
  readonly title: string;
  readonly answer: string;
  readonly kind: Mark["kind"];
  /** `right`, the mistake's name, `follows from an earlier answer`, `not right`, `blank`, `cannot be read`. */
  readonly outcome: string;
  readonly trainees: readonly string[];
}

export interface TraineeResult {
  readonly trainee: string;
  readonly right: number;
  readonly asked: number;
  /** Why tasks were not marked. */
  readonly refused: readonly string[];
}

/** One word for how an answer was marked. */
function kindWords(kind: Mark["kind"]): string {
  switch (kind) {
    case "right":
      return say`right`;
    case "mistake":
      return say`mistake`;
    case "carried":
      return say`carried`;
    case "wrong":
      return say`wrong`;
    case "blank":
      return say`blank`;
    case "unreadable":
      return say`unreadable`;
  }
}

const outcomeOf = (mark: Mark): string => {
  switch (mark.kind) {
    case "mistake":
      return mark.title;
    case "carried":
      return say`follows from an earlier answer`;
    case "wrong":
      return say`not right, without a name`;
    case "unreadable":
      return say`cannot be read`;
    default:
      return kindWords(mark.kind);
  }
};

/** Results by task, answer and mistake, the most frequent first: what the class should go through again. */
export function talliesOf(files: readonly MarkedFile[]): readonly Tally[] {
  const tallies = new Map<string, Omit<Tally, "trainees"> & { trainees: string[] }>();
  for (const { trainee, tasks } of files) {
    for (const { task, marks } of tasks) {
      for (const { answer, mark } of marks) {
        const outcome = outcomeOf(mark);
        const key = [task.number, answer.name, outcome].join("\n");
        const tally = tallies.get(key) ?? {
          task: task.number,
          title: task.title,
          answer: answer.name,
          kind: mark.kind,
          outcome,
          trainees: [],
        };
        tally.trainees.push(trainee);
        tallies.set(key, tally);
      }
    }
  }
  return [...tallies.values()].sort((a, b) => a.task - b.task || b.trainees.length - a.trainees.length);
}

/** How many answers of each trainee are right. */
export const traineeResults = (files: readonly MarkedFile[]): readonly TraineeResult[] =>
  files.map(({ trainee, tasks }) => {
    const marks = tasks.flatMap((task) => task.marks);
    return {
      trainee,
      right: marks.filter(({ mark }) => mark.kind === "right").length,
      asked: marks.length,
      refused: tasks.flatMap(({ task, refused }) =>
        refused === undefined ? [] : [say`task ${task.number}: ${refused}`],
      ),
    };
  });

/** Those of a class from whom no file came. */
export const missingFrom = (files: readonly MarkedFile[], entries: readonly ClassEntry[]): readonly string[] => {
  const there = new Set(files.map(({ trainee }) => trainee));
  return entries.map(({ trainee }) => trainee).filter((trainee) => !there.has(trainee));
};

/** Every mark, one a row, as CSV; what trainees typed is made harmless for other programs. */
export function printMarks(files: readonly MarkedFile[]): string {
  const rows = files.flatMap(({ file, trainee, tasks }) =>
    tasks.flatMap(({ task, marks, refused }): Row[] => {
      const line = (...cells: string[]): Row =>
        [file, trainee, String(task.number), task.title, ...cells].map(harmless);
      if (refused !== undefined) return [line("", "", "", say`not marked`, "", refused)];
      return marks.map(({ answer, typed, mark }) => {
        const name = mark.kind === "mistake" ? mark.title : "";
        return line(answer.name, answer.unit, typed.trim(), kindWords(mark.kind), name, markWordsOf(mark));
      });
    }),
  );
  const header = [
    say`File`,
    say`Trainee`,
    say`Task`,
    say`Title`,
    say`Answer`,
    say`Unit`,
    say`Typed`,
    say`Mark`,
    say`Mistake`,
    say`In words`,
  ];
  return printPage([header, ...rows]);
}
