import { escaped } from "../figures/draw/mark";
import type { Line } from "./line";
import type { LinesAsked } from "./lines-asked";
import { box, says, tick } from "./markup";
import { basis, caution, signatures, table } from "./pieces";

interface Group {
  readonly title: string;
  readonly rows: readonly string[];
  /** Rows whose words stand beside these materials. */
  readonly cautions: readonly string[];
}

const groups: readonly Group[] = [
  {
    title: "Thruster and tunnel",
    rows: [
      "Tunnel.diameter",
      "Tunnel.outside",
      "Tunnel.wall",
      "Tunnel.stock",
      "Fit.motor_mass",
      "Estimate.scope_charger",
    ],
    cautions: ["Job sheet.caution_lift"],
  },
  {
    title: "Glass, resin and filler",
    rows: [
      "Joint.fabric",
      "Joint.glass",
      "Joint.glass_waste",
      "Joint.glass_pack",
      "Joint.glass_packs",
      "Joint.resin",
      "Joint.resin_waste",
      "Joint.resin_pack",
      "Joint.resin_packs",
      "Joint.hardener",
      "Joint.filler",
    ],
    cautions: ["Job sheet.caution_resin", "Job sheet.caution_hardener", "Job sheet.caution_pot"],
  },
  {
    title: "Conductors, fuse, isolator, batteries",
    rows: [
      "Supply.area",
      "Supply.legs",
      "Supply.run",
      "Supply.insulation",
      "Supply.joints",
      "Supply.fuse",
      "Supply.breaking",
      "Supply.isolator",
      "Supply.isolator_short",
      "Supply.V_nominal",
      "Supply.series",
      "Supply.parallel",
      "Supply.capacity_each",
      "Supply.cranking",
      "Estimate.scope_batteries",
      "Supply.charge_area",
      "Supply.charge_run",
    ],
    cautions: ["Job sheet.caution_fault"],
  },
  {
    title: "Coating",
    rows: ["Estimate.scope_coating", "Estimate.coat_area"],
    cautions: ["Job sheet.caution_paint"],
  },
  {
    title: "Lead times",
    rows: [
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

const row = (line: Line): string =>
  box(
    "tr",
    { "data-key": line.key },
    box("td", {}, escaped(line.quantity), basis(line)),
    box(
      "td",
      { class: line.value.kind === "number" && line.kind !== "check" ? "number" : undefined },
      escaped(line.words),
    ),
    box("td", {}, tick),
    box("td", {}, tick),
    box("td", { class: "pen" }),
  );

/** Everything to order and to have in the shed before the boat comes out, with squares for ordered and there. */
export function materialsList(asked: LinesAsked): string {
  const parts = groups.flatMap(({ title, rows, cautions }) => {
    const lines = asked.lines(rows).filter(({ words }) => words !== "");
    if (lines.length === 0) return [];
    return [
      says("h2", title),
      ...asked.lines(cautions).map(caution),
      table(["Material", "Amount", "Ordered", "There", "Batch, supplier, date"], lines.map(row), [1]),
    ];
  });
  return [...parts, signatures(["Stores"])].join("\n");
}
