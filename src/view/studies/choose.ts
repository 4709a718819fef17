import { html, type TemplateResult } from "lit/html.js";

export interface Choice {
  readonly value: string;
  readonly label: string;
}

/** Choices that belong together: the rows of a page. */
export interface ChoiceGroup {
  readonly label: string;
  readonly choices: readonly Choice[];
}

const optionOf = ({ value, label }: Choice, chosen: string): TemplateResult =>
  html`<option value=${value} .selected=${value === chosen}>${label}</option>`;

export const choose = (
  label: string,
  choices: readonly Choice[],
  chosen: string,
  take: (value: string) => void,
): TemplateResult => html`<label>${label}
  <select @change=${(event: Event) => take((event.target as HTMLSelectElement).value)}>${choices.map((one) => optionOf(one, chosen))}</select>
</label>`;

export const chooseFrom = (
  label: string,
  groups: readonly ChoiceGroup[],
  chosen: string,
  take: (value: string) => void,
): TemplateResult => html`<label>${label}
  <select @change=${(event: Event) => take((event.target as HTMLSelectElement).value)}>${groups.map(
    ({ label: name, choices }) =>
      html`<optgroup label=${name}>${choices.map((one) => optionOf(one, chosen))}</optgroup>`,
  )}</select>
</label>`;

export const typed = (
  label: string,
  text: string,
  take: (text: string) => void,
  more: { readonly placeholder?: string; readonly size?: number } = {},
): TemplateResult => html`<label>${label}
  <input autocomplete="off" maxlength="200" size=${more.size ?? 9} placeholder=${more.placeholder ?? ""} .value=${text} @input=${(event: Event) => take((event.target as HTMLInputElement).value)} />
</label>`;

/** Names of rows as choices, page by page: `Supply.run` under Supply. */
export function byPage(rows: readonly { readonly name: string; readonly quantity: string }[]): ChoiceGroup[] {
  const groups = new Map<string, Choice[]>();
  for (const { name, quantity } of rows) {
    const split = name.lastIndexOf(".");
    const page = name.slice(0, split);
    const choices = groups.get(page) ?? [];
    choices.push({ value: name, label: `${quantity || name.slice(split + 1)} (${name.slice(split + 1)})` });
    groups.set(page, choices);
  }
  return [...groups].map(([label, choices]) => ({ label, choices }));
}
