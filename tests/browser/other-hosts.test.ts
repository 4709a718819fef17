import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { Workplace } from "./desk";

let place: Workplace;
beforeAll(async () => {
  place = await Workplace.open();
});
afterAll(() => place.close());

describe("a walk through the whole program", () => {
  it("asks no other host for anything, and keeps to its content policy", async () => {
    const { page, strayed } = await place.desk();
    const policy = await page.getAttribute("meta[http-equiv=Content-Security-Policy]", "content");
    expect(policy).toContain("default-src 'self'");
    expect(policy).not.toMatch(/script-src|unsafe-eval|connect-src|\*/);
    const refused = await page.evaluate(async () => {
      const results: string[] = [];
      document.addEventListener("securitypolicyviolation", ({ violatedDirective }) => results.push(violatedDirective));
      await fetch("https://example.org/").catch(() => undefined);
      const script = document.createElement("script");
      script.textContent = "window.hurt = 1";
      document.body.append(script);
      const image = document.createElement("img");
      image.src = "https://example.org/x.png";
      document.body.append(image);
      await new Promise((done) => setTimeout(done, 200));
      for (const one of [script, image]) one.remove();
      return { results: results.sort(), ran: "hurt" in window };
    });
    expect(refused).toEqual({ results: ["connect-src", "img-src", "script-src-elem"], ran: false });
    const pages = await page.locator(".pages button[data-page]").count();
    for (let i = 0; i < pages; i++) await page.locator(".pages button[data-page]").nth(i).click();
    for (const name of ["Options", "Units", "Paper", "Functions", "Studies"]) {
      await page.locator(`.tools button:has-text("${name}")`).first().click();
      await page.waitForTimeout(300);
      await page.keyboard.press("Escape");
    }
    expect(strayed.filter((address) => !address.startsWith("https://example.org/"))).toEqual([]);
  });
});
