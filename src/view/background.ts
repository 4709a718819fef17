/** Lets something go on by itself; what fails in it reaches the page's error handler like any other failure. */
export function inBackground(work: Promise<unknown>): void {
  work.catch(reportError);
}
