/** Milliseconds of each edit in a page. */
export interface EditTimes {
  /** From the press of Enter to the picture with the changed cells. */
  readonly painted: number[];
  /** From the press of Enter until the page's script has changed the cells. */
  readonly script: number[];
  /** Of these what the edit itself takes, without the library's move to the next cell; the program measures it. */
  readonly edit: number[];
}

declare global {
  interface Window {
    edits?: EditTimes;
    endEdit?: () => void;
  }
}

/** Runs in the page: takes the times of edits in `window.edits`; `endEdit` is called when the screen is at rest. */
export function watchEdits(): void {
  const times: EditTimes = { painted: [], script: [], edit: [] };
  window.edits = times;
  let [pressed, began, changed, painted] = [0, 0, 0, 0];
  window.addEventListener(
    "keydown",
    (event) => {
      if (event.key !== "Enter") return;
      pressed = event.timeStamp;
      began = performance.now();
    },
    true,
  );
  new PerformanceObserver((list) => {
    for (const { name, duration } of list.getEntries()) if (name === "edit") times.edit.push(duration);
  }).observe({ type: "measure" });
  new MutationObserver(() => {
    if (pressed === 0) return;
    if (changed === 0) changed = performance.now();
    // A message is answered after the picture that the next frame makes.
    requestAnimationFrame(() => {
      const channel = new MessageChannel();
      channel.port1.onmessage = () => {
        painted = performance.now();
      };
      channel.port2.postMessage(0);
    });
  }).observe(document.querySelector("#cells") as HTMLElement, { subtree: true, childList: true, characterData: true });
  window.endEdit = () => {
    if (pressed > 0 && painted > pressed) {
      times.painted.push(painted - pressed);
      times.script.push(changed - began);
    }
    [pressed, began, changed, painted] = [0, 0, 0, 0];
  };
}
