import { escaped } from "../figures/draw/mark";
import { say } from "../words/say";
import type { Line } from "./line";
import type { LinesAsked } from "./lines-asked";
import { box, says, tick } from "./markup";
import { basis, caution, signatures, table } from "./pieces";
import { scopeWords } from "./scope-words";

interface Group {
  readonly title: string;
  /** Rows of what is bought, with squares to tick. */
  readonly order: readonly string[];
  /** Rows that say which and how much, without squares. */
  readonly about: readonly string[];
  /** Rows whose words stand beside these materials. */
  readonly cautions: readonly string[];
}

const groups: readonly Group[] = [
  {
    title: say`Thruster and tube`,
    order: ["Fit.motor_mass", "Tunnel.stock"],
    about: ["Tunnel.diameter", "Tunnel.outside", "Tunnel.wall"],
    cautions: ["Job sheet.caution_lift"],
  },
  {
    title: say`Glass, resin and filler`,
    order: ["Joint.glass_packs", "Joint.resin_packs", "Joint.hardener", "Joint.filler"],
    about: [
      "Joint.fabric",
      "Joint.glass",
      "Joint.glass_waste",
      "Joint.glass_pack",
      "Joint.resin",
      "Joint.resin_waste",
      "Joint.resin_pack",
    ],
    cautions: ["Job sheet.caution_resin", "Job sheet.caution_hardener", "Job sheet.caution_pot"],
  },
  {
    title: say`Conductors, fuse and isolator`,
    order: ["Supply.run", "Supply.joints", "Supply.fuse", "Supply.isolator"],
    about: ["Supply.area", "Supply.legs", "Supply.insulation", "Supply.breaking", "Supply.isolator_short"],
    cautions: ["Job sheet.caution_fault"],
  },
  {
    title: say`Batteries and charging`,
    order: ["Supply.series", "Supply.parallel", "Supply.charge_run"],
    about: [
      "Supply.V_nominal",
      "Supply.capacity_each",
      "Supply.cranking",
      "Supply.charge_area",
      "Estimate.scope_batteries",
      "Estimate.scope_charger",
    ],
    cautions: [],
  },
  {
    title: say`Coating`,
    order: ["Estimate.coat_area"],
    about: ["Estimate.scope_coating"],
    cautions: ["Job sheet.caution_paint"],
  },
  {
    title: say`Lead times`,
    order: [],
    about: [
      "Estimate.order_date",
      "Estimate.lead_unit",
      "Estimate.lead_tube",
      "Estimate.lead_conductors",
      "Estimate.lead_resin",
      "Estimate.lead_battery",
      "Estimate.lead_buffer",
      "Estimate.lead_earliest",
      "Estimate.haul_date",
      "Estimate.lead_ok",
    ],
    cautions: [],
  },
];

const material = (line: Line): string => box("td", {}, escaped(line.quantity), basis(line));

const bought = (line: Line): string =>
  box(
    "tr",
    { "data-key": line.key },
    material(line),
    says("td", line.words),
    box("td", {}, tick),
    box("td", {}, tick),
    box("td", { class: "pen" }),
  );

const told = (line: Line): string => box("tr", { "data-key": line.key }, material(line), says("td", scopeWords(line)));

/** Everything to order and to have in the shed before the boat comes out, with squares for ordered and there. */
export function materialsList(asked: LinesAsked): string {
  const parts = groups.flatMap(({ title, order, about, cautions }) => {
    const there = (addresses: readonly string[]) => asked.lines(addresses).filter(({ words }) => words !== "");
    const [toBuy, toKnow] = [there(order), there(about)];
    if (toBuy.length + toKnow.length === 0) return [];
    return [
      says("h2", title),
      ...asked.lines(cautions).map(caution),
      toBuy.length === 0
        ? ""
        : table(
            [say`To order`, "", say`Ordered`, say`There`, say`Supplier, batch, date`],
            toBuy.map(bought),
            [],
            "fixed buys",
          ),
      toKnow.length === 0
        ? ""
        : table([toBuy.length === 0 ? say`Plan` : say`Which, and how much`, ""], toKnow.map(told), [], "fixed"),
    ];
  });
  return [...parts, signatures([say`Stores`])].join("\n");
}
