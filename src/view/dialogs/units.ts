import { html, type TemplateResult } from "lit/html.js";
import { setUnitChoice, type UnitChoice, unitChoice } from "../../notebook/unit-choice";
import { customary, shownChoices } from "../../units/shown";
import { say } from "../../words/say";
import type { Desk } from "../desk";
import { unitText } from "../shown/unit-text";
import { openDialog } from "./dialog";

/** What each choice is for, and the units to choose from; the first is the one that files hold. */
const quantities = [
  { name: "mm", about: say`Lengths on the hull and the tunnel`, units: shownChoices.mm },
  { name: "m", about: say`Lengths of the ship and of runs`, units: shownChoices.m },
  { name: "N", about: say`Forces`, units: shownChoices.N },
  { name: "kg", about: say`Masses`, units: shownChoices.kg },
  { name: "degC", about: say`Temperatures`, units: shownChoices.degC },
  { name: "conductor", about: say`Conductor sizes`, units: ["mm2", "AWG"] },
] as const;

const allCustomary: UnitChoice = { ...customary, conductor: "AWG" };

/** Chooses the units in which the notebook is read and typed. */
export function openUnits(desk: Desk): Promise<void> {
  return openDialog(say`Units on the screen`, ({ update, close }) => {
    const chosen = unitChoice(desk.notebook);
    const choose = (units: UnitChoice) => {
      desk.apply(say`choice of units`, (notebook) => setUnitChoice(notebook, units));
      update();
    };
    const line = ({ name, about, units }: (typeof quantities)[number]): TemplateResult => html`<label>${about}
      <select @change=${(event: Event) => choose({ ...chosen, [name]: (event.target as HTMLSelectElement).value })}>
        ${units.map((unit) => html`<option value=${unit} ?selected=${(chosen[name] ?? units[0]) === unit}>${unitText(unit)}</option>`)}
      </select>
    </label>`;
    return html`<p>${say`This changes what is shown and typed in cells, never what is held: files, formulas, functions and their working stay metric.`}</p>
      <div class="choices">
        <button type="button" @click=${() => choose({})}>${say`All metric`}</button>
        <button type="button" @click=${() => choose(allCustomary)}>${say`All customary`}</button>
      </div>
      <div class="units">${quantities.map(line)}</div>
      <p class="soft">${say`A gauge stands for the largest that the conductor is at least as thick as; a typed gauge is held as the next IEC 60228 size that is at least as thick.`}</p>
      <div class="choices"><button type="button" class="main" @click=${close}>${say`Close`}</button></div>`;
  });
}
