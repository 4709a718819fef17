import { defineTable } from "../formula/table";
import { hoerner } from "./weather-sources";

/** Cross-flow drag of a hull section on its draught. */
export const crossFlow = defineTable({
  title: "Cross-flow drag of ship sections",
  source: hoerner,
  key: { name: "fullness", about: "beam over twice the draught", unit: "1" },
  columns: { drag: { unit: "1", about: "drag coefficient on length times draught" } },
  rows: [
    [0.0108623, 1.96608],
    [0.176606, 1.96573],
    [0.353025, 1.89756],
    [0.451863, 1.78718],
    [0.472838, 1.58374],
    [0.492877, 1.27862],
    [0.493252, 1.21082],
    [0.558473, 1.08356],
    [0.646401, 0.998631],
    [0.833589, 0.87959],
    [0.988002, 0.828415],
    [1.30807, 0.759941],
    [1.63918, 0.691442],
    [1.85998, 0.657076],
    [2.31288, 0.630693],
    [2.59998, 0.596186],
    [3.00877, 0.586846],
    [3.45075, 0.585909],
    [3.7379, 0.559877],
    [4.00309, 0.559315],
  ],
});
