import type Handsontable from "handsontable/base";
import { paperTheme } from "./paper-theme";

const licence = import.meta.env.VITE_GRID_LICENCE || "non-commercial-and-evaluation";

const refuse = () => false;

/** Settings of the grid's library that no page and no person changes: it shows and asks, and changes nothing itself. */
export const fixedSettings: Handsontable.GridSettings = {
  licenseKey: licence,
  theme: paperTheme,
  width: "100%",
  height: "100%",
  colHeaders: true,
  manualColumnResize: true,
  fillHandle: { autoInsertRow: false },
  selectionMode: "range",
  outsideClickDeselects: false,
  autoColumnSize: false,
  autoRowSize: false,
  imeFastEdit: true,
  autoWrapRow: true,
  wordWrap: false,
  editor: "formula",
  sanitizer: () => "",
  beforeCreateRow: refuse,
  beforeCreateCol: refuse,
  beforeRemoveRow: refuse,
  beforeRemoveCol: refuse,
};
