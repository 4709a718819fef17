import { html, type TemplateResult } from "lit/html.js";
import type { TableShape } from "../../notebook/table-in";
import { say } from "../../words/say";

export const separatorNames: Readonly<Record<TableShape["separator"], string>> = {
  ",": say`comma`,
  ";": say`semicolon`,
  "\t": say`tab`,
  "|": say`upright line`,
};

export const decimalNames: Readonly<Record<TableShape["decimal"], string>> = { ".": say`point`, ",": say`comma` };

/** One choice among some, as a labelled list. */
export const choice = <T>(
  label: string,
  all: readonly T[],
  chosen: T,
  word: (one: T) => string,
  pick: (one: T) => void,
): TemplateResult =>
  html`<label>${label}
    <select @change=${(event: Event) => pick(all[(event.target as HTMLSelectElement).selectedIndex] as T)}>
      ${all.map((one) => html`<option ?selected=${one === chosen}>${word(one)}</option>`)}
    </select>
  </label>`;

/** A yes or no, as a box to tick. */
export const tick = (label: unknown, checked: boolean, pick: (checked: boolean) => void): TemplateResult =>
  html`<label class="check"><input type="checkbox" .checked=${checked} @change=${(event: Event) =>
    pick((event.target as HTMLInputElement).checked)} /> ${label}</label>`;
