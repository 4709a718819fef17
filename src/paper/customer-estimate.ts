import { escaped } from "../figures/draw/mark";
import { shown } from "../figures/draw/number";
import { say } from "../words/say";
import type { LinesAsked } from "./lines-asked";
import { box, says } from "./markup";
import { signatures, table, warned } from "./pieces";
import { priceLines } from "./price-lines";
import { scopeWords } from "./scope-words";

const scope = ["haul", "survey", "batteries", "charger", "coating", "joinery", "move", "trial", "waste"].map(
  (item) => `Estimate.scope_${item}`,
);

const amount = (words: string, hundredths: number, kind?: string): string =>
  box("tr", { class: kind }, says("td", words), says("td", shown(hundredths / 100, 2), "number"));

function priceTable(asked: LinesAsked): string {
  const price = priceLines(asked);
  if (!price) return says("p", say`No price: a row that it is made of is missing or holds no number.`);
  const share = asked.number("Estimate.share_80");
  const limit = asked.number("Estimate.limit");
  return [
    table(
      [say`Price`, say`Amount`],
      [
        ...price.lines.map((line) => amount(line.says, line.hundredths)),
        amount(say`Price before tax`, price.before, "sum"),
        amount(say`Tax`, price.tax),
        amount(say`Price with tax`, price.total, "sum"),
        ...(limit === undefined
          ? []
          : [amount(say`Written limit with tax; more only with written consent`, Math.round(limit * 100))]),
      ],
      [1],
    ),
    share === undefined
      ? ""
      : says(
          "p",
          say`An estimate, not a fixed price: by the yard's own hours it holds in ${shown(share * 100)} jobs of 100. What the contingency is used for is shown in the list of changes.`,
        ),
  ].join("\n");
}

function plan(asked: LinesAsked): string {
  const lines = asked.lines(["Estimate.order_date", "Estimate.haul_date", "Estimate.days"]);
  return table(
    [say`What`, say`When`],
    lines.map((line) => {
      const days =
        line.key === "days" && line.value.kind === "number"
          ? say`${shown(Math.ceil(line.value.value))} calendar days`
          : "";
      return box("tr", { "data-key": line.key }, says("td", line.quantity), says("td", days || line.words));
    }),
  );
}

const changes = Array.from({ length: 4 }, () =>
  box("tr", {}, ...Array.from({ length: 5 }, () => box("td", { class: "pen" }))),
);

/** Scope, price and limit as the customer signs them; no cost, mark-up or hour of the yard is shown. */
export function customerEstimate(asked: LinesAsked): string {
  const boat = asked.line("Job sheet.boat");
  const items = asked
    .lines(scope)
    .map((line) =>
      box(
        "tr",
        { "data-key": line.key },
        says("td", line.quantity.replace(/^Scope: /, "")),
        says("td", scopeWords(line)),
      ),
    );
  return [
    boat ? box("p", {}, says("b", "Boat:"), ` ${escaped(boat.words)}`) : "",
    says("h2", say`What is in it`),
    table([say`Work`, say`Agreed`], items),
    says("h2", say`Price`),
    priceTable(asked),
    says("h2", say`Time`),
    plan(asked),
    warned(
      say`cure and watertightness`,
      say`the days on the hard hold the cure of the joint at the shop's temperature; nobody shortens it to save a day. The tunnel is part of the watertight hull from then on: insurer and, where there is one, the classification are told by the owner.`,
    ),
    box(
      "div",
      { class: "keep" },
      says("h2", say`Changes, each agreed in writing before the work`),
      table(
        [say`Date`, say`What`, say`Amount with tax`, say`Days`, say`Owner's signature`],
        changes,
        [],
        "fixed changes",
      ),
    ),
    signatures([say`Yard`, say`Owner`]),
  ].join("\n");
}
