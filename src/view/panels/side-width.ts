import { html, type TemplateResult } from "lit/html.js";
import { say } from "../../words/say";

const least = 260;
const most = 720;
const usual = 356;
const step = 24;

let width = usual;

function set(next: number): void {
  width = Math.max(least, Math.min(next, most, window.innerWidth * 0.6));
  document.documentElement.style.setProperty("--side", `${Math.round(width)}px`);
  document.querySelector(".divider")?.setAttribute("aria-valuenow", String(Math.round(width)));
}

function drag(event: PointerEvent): void {
  const handle = event.currentTarget as HTMLElement;
  handle.setPointerCapture(event.pointerId);
  const start = width + event.clientX;
  const move = (moved: PointerEvent) => set(start - moved.clientX);
  handle.addEventListener("pointermove", move);
  handle.addEventListener("lostpointercapture", () => handle.removeEventListener("pointermove", move), { once: true });
}

function key(event: KeyboardEvent): void {
  const by = { ArrowLeft: step, ArrowRight: -step }[event.key];
  if (by === undefined && event.key !== "Enter") return;
  event.preventDefault();
  set(by === undefined ? usual : width + by);
}

/** The line between the page and its working: dragged, or moved with the arrow keys; Enter or a double click resets it. */
export const divider = (): TemplateResult => html`<div
  class="divider"
  role="separator"
  tabindex="0"
  aria-orientation="vertical"
  aria-label=${say`Width of the right side`}
  aria-valuemin=${least}
  aria-valuemax=${most}
  aria-valuenow=${usual}
  title=${say`Drag, or use the arrow keys`}
  @pointerdown=${drag}
  @dblclick=${() => set(usual)}
  @keydown=${key}
></div>`;
