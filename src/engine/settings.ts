import type { ConfigParams } from "hyperformula";

export const mostRows = 20_000;
export const mostColumns = 16_384;

/** `VITE_ENGINE_LICENCE` at build time; the open licence's key otherwise. */
const licence = import.meta.env?.VITE_ENGINE_LICENCE || "gpl-v3";

/** Everything that changes a result is set here, none of it left to the engine's defaults. */
export const settings: Partial<ConfigParams> = {
  licenseKey: licence,
  // Results must equal the same arithmetic in plain double precision; rounding is for the screen.
  smartRounding: false,
  useArrayArithmetic: true,
  decimalSeparator: ".",
  functionArgSeparator: ",",
  thousandSeparator: "",
  dateFormats: ["YYYY-MM-DD"],
  currencySymbol: [],
  leapYear1900: false,
  // One history for the whole notebook, and it is not the engine's.
  undoLimit: 0,
  maxRows: mostRows,
  maxColumns: mostColumns,
};
