import { describe, expect, it } from "vitest";
import { setCells } from "../../src/notebook/edit-cells";
import { firstOption, optionsOf } from "../../src/notebook/model";
import { positionOf, readAddress } from "../../src/notebook/rows";
import { keyedRows, openWorked } from "./worked";

interface Case {
  readonly change: string;
  readonly to: string;
  readonly why: string;
  /** Rows that follow, page by page; the changed one is not among them. */
  readonly follow: Readonly<Record<string, string>>;
}

const prices =
  "base cost_mean cost_spread cost_50 cost_80 contingency contingency_share price_50 price_80 price_taxed ceiling_ok limit";
const dearer = "price_50 price_80 price_thrust ceiling_ok";

const cases: readonly Case[] = [
  {
    change: "Boat.ahead_above@Cruiser",
    to: "6.4",
    why: "the wind attacks farther forward",
    follow: {
      Boat: "ahead",
      "Side force": "push_ahead hold yaw adrift need thrust_ok wind_held",
      Compare: "wind_held need thrust_ok",
    },
  },
  {
    change: "Boat.headroom@Cruiser",
    to: "440",
    why: "the motor has to lean",
    follow: {
      Fit: "lean lean_ok side_taken side_ok",
      Compare: "lean lean_ok side_ok",
      "Job sheet": "try_motor",
    },
  },
  {
    change: "Side force.salinity@Cruiser",
    to: "20",
    why: "lighter water in the tunnel, round the hull and above the oil",
    follow: {
      "Side force": "water_density turn quarter_time current_push current_share",
      Tunnel: "static merit stated_ratio stated_ok water",
      Fit: "oil_head header_ok",
      Compare: "turn current_share stated_ok header_ok",
      "Job sheet": "header",
    },
  },
  {
    change: "Side force.headway_factor@Cruiser",
    to: "0.9",
    why: "less side force, and by that one more shortfall; the motor does not notice",
    follow: {
      "Side force": "thrust thrust_ok wind_held turn quarter_time current_share",
      Compare: "short ruled_out wind_held thrust turn current_share price_thrust thrust_ok",
      "Job sheet": "go",
    },
  },
  {
    change: "Tunnel.edge_radius@Cruiser",
    to: "12",
    why: "the inlet loses less",
    follow: {
      Tunnel: "edge_ok inlet loss suction static stated_ratio stated_ok",
      Compare: "edge_ok stated_ok",
      "Job sheet": "round",
    },
  },
  {
    change: "Fit.header@Cruiser",
    to: "300",
    why: "the oil stands lower",
    follow: { Fit: "header_ok", Compare: "header_ok", "Job sheet": "header" },
  },
  {
    change: "Joint.leg_step@Cruiser",
    to: "20",
    why: "longer legs need room and glass; packs and rolls stay whole and the same",
    follow: {
      Joint: "leg_longest leg_ok area_in ply_area glass resin_plies resin_flat resin hardener",
      Fit: "reach_in bulkhead_ok frame_ok",
      Compare: "glass resin bulkhead_ok frame_ok leg_ok",
      "Job sheet": "sound hold_room caution_resin caution_hardener laminate_in",
    },
  },
  {
    change: "Joint.shop@Cruiser",
    to: "22",
    why: "a warmer day shortens the pot life and makes the portions smaller",
    follow: {
      Joint: "shop_ok pot portion portions hardener_portion",
      Compare: "portions shop_ok",
      "Job sheet": "needed hold_shop mix",
    },
  },
  {
    change: "Supply.run@Cruiser",
    to: "15",
    why: "less copper on the way: more volts, more thrust, more fault current, a lower price",
    follow: {
      Supply:
        "R_conductors R_outside R_outside_aged speed_pm speed_series speed I_motor U_bank U_conductors U_joints " +
        "U_isolator U_fuse U_relay V_motor thrust_left volts_ok speed_aged thrust_aged aged_ok drop drop_ok area_least " +
        "fault_least clear_ok withstand_ok stall stall_ok used used_ok endurance endurance_ok charge_time charge_ok",
      "Side force": "thrust thrust_ok wind_held turn quarter_time current_share",
      Estimate: `cost_conductors materials ${prices}`,
      Compare:
        `short ruled_out wind_held thrust turn current_share run drop V_motor thrust_left ${dearer} thrust_ok volts_ok ` +
        "aged_ok drop_ok clear_ok withstand_ok stall_ok used_ok endurance_ok charge_ok",
      "Job sheet": "go conductors loaded",
      "Hand-over": "battery_predicted loop_predicted",
    },
  },
  {
    change: "Estimate.bond_in_high@Cruiser",
    to: "26",
    why: "a worse bad case moves mean and spread; the likely hours stay",
    follow: {
      Estimate: `bond_in_mean bond_in_spread hours_mean hours_spread days yard hours_50 hours_80 ${prices}`,
      Compare: `hours days ${dearer}`,
    },
  },
  {
    change: "Job sheet.sign_leak@Cruiser",
    to: "signed",
    why: "one signature more",
    follow: { "Job sheet": "signed" },
  },
  {
    change: "Hand-over.motor_port@Sloop",
    to: "10.4",
    why: "the lower reading is the record that the service is held against",
    follow: {
      "Hand-over": "motor_low motor_dev motor_ok volts_ok loop loop_dev",
      Service: "motor_change motor_ok work_volts",
    },
  },
  {
    change: "Service.anode_found@Sloop",
    to: "60",
    why: "the anode gave more",
    follow: { Service: "anode_current anode_hours anode_days anode_ok" },
  },
  {
    change: "Service.serviced@Pilot",
    to: "2027-10-01",
    why: "the first service sets the dates anew",
    follow: { Service: "counted_from next_service next_anode age interval_ok work_due empty" },
  },
];

describe("a changed input", () => {
  const live = openWorked("three-hulls");
  const rows = keyedRows(live.notebook);
  const options = optionsOf(live.notebook);

  const shown = (): Map<string, string> =>
    new Map(
      rows.flatMap(({ name, page, row }) =>
        options.map((option, i) => [
          `${name}@${option}`,
          JSON.stringify(live.value({ page: page.id, row, column: firstOption + i })),
        ]),
      ),
    );

  it.each(cases)("moves exactly what should follow: $change to $to, $why", ({ change, to, follow }) => {
    const option = readAddress(change).option;
    const before = shown();
    live.apply("change", (notebook) =>
      setCells(notebook, [{ ...positionOf(notebook, readAddress(change)), text: to }]),
    );
    const after = shown();
    live.undo();
    const moved = [...after].filter(([cell, value]) => before.get(cell) !== value).map(([cell]) => cell);
    const expected = Object.entries(follow).flatMap(([page, keys]) =>
      keys.split(" ").map((key) => `${page}.${key}@${option}`),
    );
    expect(moved.toSorted()).toEqual([change, ...expected].toSorted());
    expect(shown()).toEqual(before);
  });

  it("is tried on every page that takes inputs", () => {
    const pages = new Set(rows.flatMap(({ kind, page }) => (kind === "input" ? [page.name] : [])));
    expect(new Set(cases.map(({ change }) => readAddress(change).page))).toEqual(pages);
  });
});
