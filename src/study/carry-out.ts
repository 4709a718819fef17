/** How far a study has come. */
export interface Progress {
  readonly done: number;
  readonly of: number;
}

/**
 * A study as a row of small steps: it says how far it has come after each and ends with its answer. It does nothing
 * by itself, so whoever carries it out decides about pauses and can stop it between two steps.
 */
export type Study<Answer> = Generator<Progress, Answer, void>;

export interface CarryOutWishes {
  /** Stops the study between two steps. */
  readonly signal?: AbortSignal;
  readonly progress?: (progress: Progress) => void;
  /** Longest time without a pause, in ms; messages such as a stop come in during a pause. */
  readonly pauseAfter?: number;
}

/** Does all steps at once. */
export function finish<Answer>(study: Study<Answer>): Answer {
  for (;;) {
    const step = study.next();
    if (step.done) return step.value;
  }
}

/** Lets messages in. Timers that follow one another are held up by 4 ms each in browsers; a message is not. */
function pause(): Promise<void> {
  const { port1, port2 } = new MessageChannel();
  return new Promise((resume) => {
    port1.onmessage = () => {
      port1.close();
      resume();
    };
    port2.postMessage(undefined);
  });
}

/**
 * Does the steps with pauses between them.
 *
 * @throws the signal's reason when it was stopped.
 */
export async function carryOut<Answer>(study: Study<Answer>, wishes: CarryOutWishes = {}): Promise<Answer> {
  const { signal, progress, pauseAfter = 50 } = wishes;
  let began = performance.now();
  for (;;) {
    signal?.throwIfAborted();
    const step = study.next();
    if (step.done) return step.value;
    if (performance.now() - began < pauseAfter) continue;
    progress?.(step.value);
    await pause();
    began = performance.now();
  }
}
