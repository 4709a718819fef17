import type { Page } from "playwright-core";
import { contentOf } from "./desk";

/** Gives a file to a button that asks for one. */
export async function give(page: Page, button: string, name: string, content: string | Uint8Array): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    page.getByRole("button", { name: button, exact: true }).click(),
  ]);
  await chooser.setFiles({ name, mimeType: "application/octet-stream", buffer: Buffer.from(content) });
}

/** The file that a button hands out. */
export async function handedOut(page: Page, button: string): Promise<{ name: string; text: string }> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: button, exact: true }).click(),
  ]);
  return { name: download.suggestedFilename(), text: (await contentOf(download)).toString("utf8") };
}
