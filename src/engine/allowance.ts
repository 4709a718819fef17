import { say } from "../words/say";

/** Thrown out of a calculation whose time is up; what it had done is void. */
export class OutOfTime extends Error {
  override readonly name = "OutOfTime";

  constructor(readonly seconds: number) {
    super(say`the calculation took longer than ${seconds} seconds and was stopped`);
  }
}

/** Looking at the clock takes longer than most steps of a calculation. */
const stepsBetweenLooks = 1000;

let ends = Number.POSITIVE_INFINITY;
let allowed = 0;
let steps = 0;

/** Seconds that have gone by; a test puts its own in the place of it. */
export const clock = { now: () => performance.now() / 1000 };

/** Counts one step of a calculation. @throws OutOfTime when the time of the calculation that is running is up. */
export function step(): void {
  if (++steps < stepsBetweenLooks) return;
  steps = 0;
  if (clock.now() > ends) throw new OutOfTime(allowed);
}

/**
 * Calculates with so many seconds at most. The calculation runs on the page's own thread, where nothing can break in
 * on it, so it looks at the clock itself.
 *
 * @throws OutOfTime when they are over.
 */
export function within<T>(seconds: number, calculate: () => T): T {
  const before = { ends, allowed };
  allowed = seconds;
  ends = clock.now() + seconds;
  try {
    return calculate();
  } finally {
    ({ ends, allowed } = before);
  }
}
