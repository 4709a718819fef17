import { html, type TemplateResult } from "lit/html.js";
import { amountAt, countOf } from "../../course/amount";
import type { Scalar } from "../../course/scalar";
import { shownUnit } from "../../course/shown";
import type { Drawn } from "../../course/task";
import { say } from "../../words/say";

/** A slider over what an input can be, with a field beside it: a number, or a choice from the list. */
export function slider(
  { name, about, unit, amount }: Drawn,
  value: Scalar,
  slide: (value: Scalar) => void,
): TemplateResult {
  const last = countOf(amount) - 1;
  const written = shownUnit(unit).trim();
  const says = written === "" ? about : `${about}, ${written}`;
  const id = `slide-${name}`;
  const places = Array.from({ length: last + 1 }, (_, place) => amountAt(amount, place));
  const nearest =
    typeof value === "number" && amount.kind === "steps"
      ? Math.max(0, Math.min(last, Math.round((value - amount.from) / amount.step)))
      : Math.max(0, places.indexOf(value));
  const move = (event: Event) => slide(amountAt(amount, Number((event.target as HTMLInputElement).value)));
  const field =
    amount.kind === "list"
      ? html`<select aria-label=${say`${says}, chosen`} @change=${(event: Event) => slide(amountAt(amount, (event.target as HTMLSelectElement).selectedIndex))}>
          ${places.map((one, place) => html`<option ?selected=${place === nearest}>${one}</option>`)}
        </select>`
      : html`<input type="number" aria-label=${say`${says}, typed`} min=${amount.from} max=${places[last] ?? ""} step=${amount.step} .value=${String(value)} @change=${(
          event: Event,
        ) => {
          const box = event.target as HTMLInputElement;
          if (box.validity.rangeOverflow || box.validity.rangeUnderflow || !Number.isFinite(box.valueAsNumber)) {
            box.reportValidity();
          } else slide(box.valueAsNumber);
        }} />`;
  return html`<div class="slider">
    <label for=${id}>${says}</label>
    <input type="range" id=${id} min="0" max=${last} step="1" aria-valuetext=${`${value} ${written}`.trim()} .value=${String(nearest)} @input=${move} />
    ${field}
  </div>`;
}
