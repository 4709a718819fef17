import type { SheetTexts } from "../engine/engine";
import { say } from "../words/say";
import { carryOut, type Study } from "./carry-out";
import type { Asked, Studies, StudyName, StudyReply, StudyRequest } from "./messages";
import { moves } from "./moves";
import { optionsOneByOne } from "./options/run";
import { type Runner, runnerOf } from "./runner";
import { smallest } from "./smallest";
import { solve } from "./solve";
import { spread } from "./spread/spread";
import type { Subject } from "./subject";
import { twoInputs } from "./two-inputs";

interface Open {
  readonly subject: Subject;
  readonly sheets: readonly SheetTexts[];
  readonly runner: Runner;
}

type AnyAnswer = Studies[StudyName]["answer"];

function studyOf({ subject, sheets, runner }: Open, asked: Asked): Study<AnyAnswer> {
  switch (asked.study) {
    case "solve":
      return solve(subject, runner, asked.question);
    case "smallest":
      return smallest(subject, runner, asked.question);
    case "moves":
      return moves(subject, runner, asked.question.result);
    case "spread":
      return spread(subject, runner, asked.question);
    case "two inputs":
      return twoInputs(subject, runner, asked.question);
    case "options":
      return optionsOneByOne(subject, sheets, asked.question);
  }
}

/** Millions of numbers are handed over, since copying them would take as long as drawing them. */
const bulkOf = (answer: AnyAnswer): ArrayBuffer[] =>
  "allHold" in answer ? answer.results.map(({ values }) => values.buffer as ArrayBuffer) : [];

/**
 * The worker's side of a talk about studies, without the worker: takes requests, hands replies to `post`.
 *
 * Studies run side by side in small steps, so that a stop is heard while one of them runs.
 */
export function answering(
  post: (reply: StudyReply, handedOver?: ArrayBuffer[]) => void,
): (request: StudyRequest) => void {
  let open: Open | undefined;
  const running = new Map<number, AbortController>();

  const answer = async (ask: number, asked: Asked): Promise<void> => {
    const stop = new AbortController();
    running.set(ask, stop);
    try {
      if (!open) throw new Error(say`Nothing can be asked before the notebook is there; send it first.`);
      const study = studyOf(open, asked);
      const progress = (one: { readonly done: number; readonly of: number }) => post({ kind: "progress", ask, ...one });
      const answer = await carryOut(study, { signal: stop.signal, progress });
      post({ kind: "answer", ask, answer }, bulkOf(answer));
    } catch (cause) {
      if (stop.signal.aborted) post({ kind: "stopped", ask });
      else post({ kind: "refused", ask, sentence: cause instanceof Error ? cause.message : String(cause) });
    } finally {
      running.delete(ask);
    }
  };

  return (request) => {
    switch (request.kind) {
      case "subject": {
        // A study of the notebook as it was would answer a question that nobody has any more.
        for (const stop of running.values()) stop.abort();
        open?.runner.close();
        const { subject, sheets } = request;
        const runner = runnerOf(subject.chain, sheets);
        open = { subject, sheets, runner };
        post({ kind: "ready", by: runner.by, why: runner.why });
        break;
      }
      case "ask":
        answer(request.ask, request).catch((cause: unknown) => {
          post({ kind: "refused", ask: request.ask, sentence: String(cause) });
        });
        break;
      case "stop":
        running.get(request.ask)?.abort();
        break;
    }
  };
}
