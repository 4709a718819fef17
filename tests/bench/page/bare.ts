import Handsontable from "handsontable/base";
import { registerEditor, TextEditor } from "handsontable/editors";
import { registerRenderer, textRenderer } from "handsontable/renderers";
import { mainTheme, registerTheme } from "handsontable/themes";

registerEditor(TextEditor);
registerRenderer(textRenderer);

/** The grid as it comes, 150 rows and 54 columns of numbers, without formulas: what an edit costs at least. */
new Handsontable(document.querySelector("#cells") as HTMLElement, {
  data: Array.from({ length: 150 }, (_, row) => Array.from({ length: 54 }, (_, column) => row + column / 100)),
  licenseKey: "non-commercial-and-evaluation",
  theme: registerTheme(mainTheme),
  width: "100%",
  height: "100%",
  colHeaders: true,
  rowHeaders: true,
  autoColumnSize: false,
  autoRowSize: false,
}).selectCell(1, 4);
document.documentElement.dataset.ready = "";
