import { defineTable } from "../formula/table";
import { absShipCable } from "./electrical-sources";

/**
 * Continuous current of single-core ship cable in 45 °C by insulation class, as printed. The rows follow
 * a constant times area to the power 0.625; 50 mm2 at 60 °C (105 A) stands below that line in every copy.
 */
export const shipCableCurrent = defineTable({
  title: "ABS ship cable sizes",
  source: absShipCable,
  key: { name: "size", about: "nominal size", unit: "mm2" },
  columns: {
    "60": { unit: "A", about: "V60, polyvinyl chloride" },
    "75": { unit: "A", about: "V75, heat-resisting polyvinyl chloride" },
    "85": { unit: "A", about: "R85 and E85, cross-linked polyethylene and ethylene propylene rubber" },
    "95": { unit: "A", about: "M95 and S95, mineral and silicone rubber" },
  },
  rows: [
    [25, 71, 101, 120, 135],
    [35, 87, 125, 148, 166],
    [50, 105, 156, 184, 208],
    [70, 135, 192, 228, 256],
    [95, 165, 232, 276, 310],
    [120, 190, 269, 319, 359],
    [150, 220, 309, 367, 412],
    [185, 250, 353, 418, 470],
    [240, 290, 415, 492, 553],
    [300, 335, 477, 565, 636],
  ],
});
