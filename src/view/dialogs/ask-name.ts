import { html } from "lit/html.js";
import { say } from "../../words/say";
import { openDialog } from "./dialog";

const keptUnder = "athwart reviewer";

/** The name with which this browser signs; empty until one was given. */
export function knownName(): string {
  try {
    return localStorage.getItem(keptUnder) ?? "";
  } catch {
    // A browser may refuse to keep anything; then the name is asked for again.
    return "";
  }
}

function keepName(name: string): void {
  try {
    localStorage.setItem(keptUnder, name);
  } catch {
    // The name is used all the same.
  }
}

/** The date of the wall clock, `2026-11-25`. */
export function today(now = new Date()): string {
  const two = (part: number) => String(part).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/**
 * The name of the person who reviews; asked for once and kept in this browser.
 *
 * @param again asks also where one is known, to sign with another.
 * @returns undefined when none is given.
 */
export async function askName(again = false): Promise<string | undefined> {
  const known = knownName();
  if (known && !again) return known;
  let name: string | undefined;
  await openDialog(say`Who reviews?`, ({ close }) => {
    const keep = (event: SubmitEvent) => {
      event.preventDefault();
      name = String(new FormData(event.currentTarget as HTMLFormElement).get("name") ?? "").trim();
      if (name) keepName(name);
      close();
    };
    return html`<p>${say`Your name stands beside every tick and every accepted finding, with the date, in the notebook's file. It is asked for once and kept in this browser.`}</p>
      <form class="sign" @submit=${keep}>
        <label>${say`Name`} <input name="name" autocomplete="name" required autofocus maxlength="80" .value=${known} /></label>
        <div class="choices">
          <button type="submit" class="main">${say`Sign with this name`}</button>
          <button type="button" @click=${close}>${say`Leave it`}</button>
        </div>
      </form>`;
  });
  return name || undefined;
}
