import type { Page } from "playwright-core";
import { expect } from "vitest";
import type { OpenDesk, Workplace } from "./desk";

interface Watched {
  readonly hurt?: unknown;
  readonly refusedByPolicy?: readonly string[];
}

/** What can run, load, send or lead away. Frames that print are the program's own and stand in no test here. */
const dangerous =
  "script, iframe, frame, object, embed, link, meta, base, form[action], [onload], [onerror], [ontoggle], [onfocus], [onmouseover], [onpageshow], a[href^='javascript' i], a[href^='data' i], img, video";

/** A desk that notes whatever the content policy refuses. */
export async function watchedDesk(
  place: Workplace,
  width: number,
  height: number,
): Promise<OpenDesk & { readonly dialogs: string[] }> {
  const desk = await place.desk({ viewport: { width, height }, reducedMotion: "reduce" }, (context) =>
    context.addInitScript(() => {
      Reflect.deleteProperty(Navigator.prototype, "serviceWorker");
      const refused: string[] = [];
      Object.assign(window, { refusedByPolicy: refused });
      document.addEventListener("securitypolicyviolation", ({ violatedDirective, blockedURI }) =>
        refused.push(`${violatedDirective} ${blockedURI}`),
      );
    }),
  );
  const dialogs: string[] = [];
  desk.page.on("dialog", (dialog) => {
    dialogs.push(dialog.message());
    dialog.dismiss().catch(() => undefined);
  });
  desk.page.on("popup", (popup) => dialogs.push(`a window: ${popup.url()}`));
  return { ...desk, dialogs };
}

const standing = (page: Page): Promise<string[]> =>
  page.evaluate(
    (selector) => [...document.querySelectorAll(selector)].map((one) => one.outerHTML.replace(/\?t=\d+/, "")),
    dangerous,
  );

/** @returns what asks whether nothing of the texts has run, loaded or come to stand in the page as more than text. */
export async function unharmed(
  desk: OpenDesk & { readonly dialogs: readonly string[] },
): Promise<(where: string) => Promise<void>> {
  const { page } = desk;
  const address = new URL(page.url()).pathname;
  // Chunks of the program that are fetched later are links of its own in the head.
  const parts = `href="${new URL("assets/", page.url())}`;
  const own = new Set(await standing(page));
  return async (where) => {
    const watched = await page.evaluate((): Watched => {
      const { hurt, refusedByPolicy } = window as Watched;
      return { hurt, refusedByPolicy: refusedByPolicy ?? [] };
    });
    expect(watched, where).toEqual({ hurt: undefined, refusedByPolicy: [] });
    const more = (await standing(page)).filter(
      (one) => !own.has(one) && !(one.startsWith("<link") && one.includes(parts)),
    );
    expect(more, where).toEqual([]);
    expect(page.frames().length, where).toBe(1);
    expect(new URL(page.url()).pathname, where).toBe(address);
    expect([...desk.dialogs, ...desk.complaints, ...desk.strayed], where).toEqual([]);
    await expect.poll(() => page.locator("dialog.fault").count(), { message: where }).toBe(0);
  };
}
