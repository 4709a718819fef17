import { html, type TemplateResult } from "lit/html.js";
import { say } from "../../words/say";
import { inBackground } from "../background";
import type { Disk } from "./disk";
import { canPick } from "./pickers";

/** What can be done with folders and files on the disk; where the browser cannot write there, what to do instead. */
export function diskChoices(disk: Disk, close: () => void): TemplateResult {
  const choice = (label: string, act: () => Promise<void>) => {
    // The browser asks for the place while the press of the button is still fresh; the dialog makes room for it.
    const press = () => {
      inBackground(act());
      close();
    };
    return html`<button type="button" @click=${press}>${label}</button>`;
  };
  if (!canPick()) {
    return html`<h3>${say`On the disk`}</h3>
      <p class="soft">${say`This browser writes no files by itself: Save hands the notebook out as a download, Open … takes one in.`}</p>`;
  }
  const { target } = disk;
  return html`<h3>${say`On the disk`}</h3>
    ${target === undefined ? "" : html`<p class="soft">${say`Save writes to ${target}.`}</p>`}
    <div class="choices">
      ${choice(say`Open a folder …`, () => disk.openFolder())}
      ${choice(say`Save to a folder …`, () => disk.saveToFolder())}
      ${choice(say`Save to a file …`, () => disk.saveToFile())}
    </div>`;
}
