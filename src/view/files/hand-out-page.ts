import { say } from "../../words/say";
import type { Desk } from "../desk";

/** Hands the page out as its file holds it, or with values in the place of formulas. */
export async function exportPage(desk: Desk, what: "typed" | "values"): Promise<void> {
  const [{ exportTyped, exportValues }, { handOut }] = await Promise.all([
    import("./export-page"),
    import("./hand-out"),
  ]);
  const { page, live } = desk;
  if (!live) return;
  const name = what === "typed" ? page.file : page.file.replace(/\.csv$/i, "-values.csv");
  handOut(name, what === "typed" ? exportTyped(page) : exportValues(live, page), "text/csv;charset=utf-8");
  desk.say(say`${page.name} exported as ${name}.`);
}
