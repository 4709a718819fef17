import type { SheetTexts } from "../engine/engine";
import type { Progress } from "./carry-out";
import type { MovesAnswer } from "./moves";
import type { OptionResults, OptionsQuestion } from "./options/run";
import type { SmallestAnswer, SmallestQuestion } from "./smallest";
import type { SolveAnswer, SolveQuestion } from "./solve";
import type { SpreadAnswer, SpreadQuestion } from "./spread/spread";
import type { Subject } from "./subject";
import type { TwoInputsAnswer, TwoInputsQuestion } from "./two-inputs";

/** Each study by name: what is asked and what is answered. Inputs and results are places in the subject. */
export interface Studies {
  readonly solve: { readonly question: SolveQuestion; readonly answer: SolveAnswer };
  readonly smallest: { readonly question: SmallestQuestion; readonly answer: SmallestAnswer };
  readonly moves: { readonly question: { readonly result: number }; readonly answer: MovesAnswer };
  readonly spread: { readonly question: SpreadQuestion; readonly answer: SpreadAnswer };
  readonly "two inputs": { readonly question: TwoInputsQuestion; readonly answer: TwoInputsAnswer };
  readonly options: { readonly question: OptionsQuestion; readonly answer: readonly OptionResults[] };
}

export type StudyName = keyof Studies;

/** A study with its question. */
export type Asked = { [K in StudyName]: { readonly study: K; readonly question: Studies[K]["question"] } }[StudyName];

/**
 * What the page sends to the study worker. All of it is plain data.
 *
 * `subject` comes first and again after every change of the notebook; it is answered by `ready`. Each `ask` is answered
 * by any number of `progress` and one of `answer`, `stopped`, `refused` with its number. `stop` ends the ask of that
 * number; one that is over already is no trouble.
 */
export type StudyRequest =
  | { readonly kind: "subject"; readonly subject: Subject; readonly sheets: readonly SheetTexts[] }
  | ({ readonly kind: "ask"; readonly ask: number } & Asked)
  | { readonly kind: "stop"; readonly ask: number };

/** What the worker sends back. */
export type StudyReply =
  /** Who calculates from now on, and why it is the engine where it is. */
  | { readonly kind: "ready"; readonly by: "text" | "closures" | "engine"; readonly why: string | undefined }
  | ({ readonly kind: "progress"; readonly ask: number } & Progress)
  | { readonly kind: "answer"; readonly ask: number; readonly answer: Studies[StudyName]["answer"] }
  | { readonly kind: "stopped"; readonly ask: number }
  /** One sentence for the person. */
  | { readonly kind: "refused"; readonly ask: number; readonly sentence: string };
