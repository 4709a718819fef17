import { Refusal } from "../notebook/refusal";
import { say } from "../words/say";
import type { ClassEntry } from "./class-list";
import type { Course } from "./course";
import { type FileWishes, printTraineeFile } from "./trainee-file";

/** A trainee's name as part of a file name. */
export const fileStem = (trainee: string): string => trainee.replace(/[^\p{L}\p{N}_-]+/gu, "-");

/** The file names of a class, in its order. @throws Refusal when two trainees would share one. */
export function fileStems(entries: readonly ClassEntry[]): readonly string[] {
  const stems = entries.map(({ trainee }) => fileStem(trainee));
  const twice = entries.find((_, i) => stems.indexOf(stems[i] as string) < i);
  if (twice) throw new Refusal(say`${twice.trainee} would get the same file as another trainee; give another name.`);
  return stems;
}

/** Every trainee's file by its name, to be handed out. @throws Refusal when two trainees would share a file. */
export function classFiles(
  course: Course,
  entries: readonly ClassEntry[],
  wishes: FileWishes,
): ReadonlyMap<string, string> {
  const stems = fileStems(entries);
  return new Map(entries.map(({ trainee }, i) => [`${stems[i]}.csv`, printTraineeFile(course, trainee, wishes)]));
}
