import { html, nothing, type TemplateResult } from "lit/html.js";
import { backTo } from "../../notebook/keeping/back-to";
import type { Head, Room } from "../../notebook/keeping/keeping";
import type { State } from "../../notebook/keeping/kept";
import { Refusal } from "../../notebook/refusal";
import { say } from "../../words/say";
import { inBackground } from "../background";
import type { Desk } from "../desk";
import type { Disk } from "../files/disk";
import { diskChoices } from "../files/disk-choices";
import { mayLeave } from "../files/notebook-file";
import type { Keeper } from "../keeping/keeper";
import { isAlarming, type Safety } from "../keeping/safety";
import { shipped, shippedNotebook } from "../shipped";
import { openDialog } from "./dialog";

const time = new Intl.DateTimeFormat(undefined, { dateStyle: "medium", timeStyle: "short" });
const size = (characters: number): string => `${Math.max(1, Math.round(characters / 1000))} kB`;

const sentenceOf = ({ sentence }: Safety): string => (/[.…]$/.test(sentence) ? sentence : `${sentence}.`);

const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(bytes < 1e7 ? 1 : 0)} MB`;

function roomText(room: Room | undefined): string {
  if (!room) return "";
  const promise = room.isLasting
    ? say`It does not clear them by itself.`
    : say`Should the disk grow full it may clear them, so save to a file now and then.`;
  const taken = say`Program and notebooks take ${megabytes(room.used)} of the ${megabytes(room.most)} that the browser allows.`;
  return `${taken} ${promise}`;
}

/** The notebooks of this browser: open, delete, restore; versions and the last states of the open one. */
export async function openNotebooks(desk: Desk, keeper: Keeper, disk: Disk): Promise<void> {
  let heads: readonly Head[] = await keeper.list();
  let states: readonly State[] = (await keeper.open?.states().catch(() => [])) ?? [];
  const room = await keeper.room();
  let refusal = "";

  await openDialog(
    say`Notebooks`,
    ({ update, close }) => {
      const again = async () => {
        heads = await keeper.list();
        states = (await keeper.open?.states().catch(() => [])) ?? [];
        update();
      };
      /** Does something and draws the lists anew; a refusal is said in the dialog. */
      const act =
        (what: () => Promise<unknown>, isLast = false) =>
        async () => {
          refusal = "";
          try {
            await what();
            if (isLast) close();
            else await again();
          } catch (problem) {
            if (!(problem instanceof Refusal)) throw problem;
            refusal = problem.message;
            update();
          }
        };
      const line = (head: Head): TemplateResult => {
        const isOpen = head.id === keeper.open?.id;
        const reads = isOpen && desk.closed !== undefined;
        return html`<li>
          <span><b>${head.title}</b> <span class="soft">${time.format(head.changed)}, ${size(head.size)}${isOpen ? say`, open` : ""}</span></span>
          ${
            isOpen
              ? nothing
              : html`<button type="button" @click=${act(async () => (await mayLeave(desk, head.title)) && keeper.show(head.id), true)}>${say`Open`}</button>
              <button type="button" @click=${act(() => keeper.remove(head.id))}>${say`Delete`}</button>`
          }
          ${reads ? html`<button type="button" @click=${act(() => keeper.show(head.id, true), true)}>${say`Take over from the other window`}</button>` : nothing}
        </li>`;
      };
      const deletedLine = (head: Head): TemplateResult => html`<li>
        <span>${head.title} <span class="soft">${say`deleted ${time.format(head.deleted ?? 0)}`}</span></span>
        <button type="button" @click=${act(() => keeper.restore(head.id))}>${say`Restore`}</button>
        <button type="button" @click=${act(() => keeper.erase(head.id))}>${say`Erase for good`}</button>
      </li>`;
      const kept = heads.filter(({ deleted }) => deleted === undefined);
      const deleted = heads.filter((head) => head.deleted !== undefined);
      const back = (seq: number, label: string) =>
        act(async () => {
          const state = await keeper.open?.stateAt(seq);
          if (state) desk.apply(say`back to: ${label}`, backTo(state));
        }, true);
      const name = (event: SubmitEvent) => {
        event.preventDefault();
        const form = event.currentTarget as HTMLFormElement;
        const wanted = String(new FormData(form).get("version") ?? "");
        const keep = act(async () => {
          await keeper.open?.nameVersion(wanted);
          form.reset();
        });
        inBackground(keep());
      };
      return html`
        ${desk.safety.sentence ? html`<p class=${isAlarming(desk.safety) ? "short" : "soft"}>${sentenceOf(desk.safety)} ${roomText(room)}</p>` : nothing}
        ${refusal ? html`<p class="short" role="alert">${refusal}</p>` : nothing}
        ${kept.length > 0 ? html`<h3>${say`Kept in this browser`}</h3><ul class="option-list">${kept.map(line)}</ul>` : nothing}
        ${diskChoices(disk, close)}
        <h3>${say`Start from a worked notebook`}</h3>
        <div class="choices">${shipped.map(
          ({ folder, title }) =>
            html`<button type="button" @click=${act(async () => {
              if (!(await mayLeave(desk, title))) return;
              desk.open(await shippedNotebook(folder));
              desk.say(say`${title} is open, as it was shipped.`);
            }, true)}>${title}</button>`,
        )}</div>
        ${
          keeper.open
            ? html`<h3>${say`Versions of the open notebook`}</h3>
              <form @submit=${name}><input name="version" aria-label=${say`Name of a version`} autocomplete="off" required />
                <button type="submit">${say`Keep this state under a name`}</button></form>
              <ul class="option-list">${keeper.open.versions.map(
                (
                  version,
                ) => html`<li><span>${version.name} <span class="soft">${time.format(version.when)}</span></span>
                  <button type="button" @click=${act(async () => {
                    const state = await keeper.open?.versionAt(version.number);
                    if (state) desk.apply(say`back to version ${version.name}`, backTo(state));
                  }, true)}>${say`Go back to it`}</button>
                  <button type="button" @click=${act(async () => keeper.open?.dropVersion(version.number))}>${say`Remove`}</button></li>`,
              )}</ul>
              <details><summary>${say`The last ${states.length} states`}</summary>
                <ul class="option-list">${states.map(
                  (
                    { seq, when, label },
                    i,
                  ) => html`<li><span>${label} <span class="soft">${time.format(when)}</span></span>
                    ${i === 0 ? html`<span class="soft">${say`now`}</span>` : html`<button type="button" @click=${back(seq, label)}>${say`Go back to it`}</button>`}</li>`,
                )}</ul></details>`
            : nothing
        }
        ${deleted.length > 0 ? html`<h3>${say`Deleted, to be restored for 30 days`}</h3><ul class="option-list">${deleted.map(deletedLine)}</ul>` : nothing}
        <div class="choices"><button type="button" class="main" @click=${close}>${say`Close`}</button></div>`;
    },
    true,
  );
}
