import { markWordsOf } from "../course/mark";
import { missingFrom, printMarks, talliesOf, traineeResults } from "../course/results";
import { type MarkedFile, markTraineeFile } from "../course/trainee-file";
import { say } from "../words/say";
import { openClass, openCourse, readBytes } from "./course";
import { columns, Misuse, type Output } from "./output";

export interface MarkWishes {
  readonly classList: string | undefined;
  readonly csv: boolean;
  readonly json: boolean;
}

function fileText({ file, trainee, tasks }: MarkedFile): string {
  const rows = tasks.flatMap(({ task, marks, refused }) =>
    refused === undefined
      ? marks.map(({ answer, typed, mark }) => [
          `${task.number}`,
          answer.name,
          `${typed.trim()} ${answer.unit === "1" ? "" : answer.unit}`.trim(),
          markWordsOf(mark),
        ])
      : [[`${task.number}`, "", "", say`not marked: ${refused}`]],
  );
  return `${trainee} (${file})\n${columns([[say`task`, say`answer`, say`typed`, say`mark`], ...rows], () => false)}`;
}

function tallyText(files: readonly MarkedFile[]): string {
  const rows = talliesOf(files).map(({ task, answer, kind, outcome, trainees }) => [
    `${task}`,
    answer,
    `${trainees.length}`,
    outcome,
    kind === "right" ? "" : trainees.join(" "),
  ]);
  return columns([[say`task`, say`answer`, say`how many`, say`outcome`, say`who`], ...rows], (i) => i === 2);
}

/** `mark COURSE FILE...`: marks the files that came back; text, `--csv` one mark a row, or `--json`. */
export function markFiles(output: Output, args: readonly string[], wishes: MarkWishes): void {
  const [folder, ...names] = args;
  if (folder === undefined || names.length === 0) {
    throw new Misuse(say`mark takes a course and the files to mark, for example mark sheets/course answers/*.csv.`);
  }
  const course = openCourse(output, folder);
  const files = names.map((name) => markTraineeFile(course, name, readBytes(output, name)));
  const results = traineeResults(files);
  const missing = wishes.classList === undefined ? [] : missingFrom(files, openClass(output, wishes.classList));
  if (wishes.csv) {
    output.write(printMarks(files));
    return;
  }
  if (wishes.json) {
    output.write(
      `${JSON.stringify({ course: course.title, trainees: results, outcomes: talliesOf(files), missing }, undefined, 2)}\n`,
    );
    return;
  }
  const scores = results.map(({ trainee, right, asked, refused }) => [
    trainee,
    say`${right} of ${asked} right`,
    ...refused,
  ]);
  const parts = [files.map(fileText).join("\n\n"), columns(scores, () => false), tallyText(files)];
  if (missing.length > 0) parts.push(say`No file came from: ${missing.join(", ")}`);
  output.write(`${parts.join("\n\n")}\n`);
}
