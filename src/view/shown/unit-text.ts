const raised: Readonly<Record<string, string>> = { "2": "²", "3": "³" };

/**
 * A unit as it is printed: `mm2` -> mm², `degC` -> °C, `mohm` -> mΩ, `N m` -> N m with a space that does not break.
 * Text that is no unit comes back as it is.
 */
export const unitText = (unit: string): string =>
  unit
    .replace(/\bdegC\b/g, "°C")
    .replace(/^F$/, "°F")
    .replace(/^lbm$/, "lb")
    .replace(/\bdeg\b/g, "°")
    .replace(/(k|m|M|µ|)ohm\b/g, "$1Ω")
    .replace(/([A-Za-z])([23])(?![\w.])/g, (_, letter: string, power: string) => letter + raised[power])
    .replaceAll(" ", "\u00a0");

/** Whether a unit marks a check: its number is a share to spare or missing. */
export const isMargin = (unit: string): boolean => unit === "margin";

/** A number with its unit; plain numbers (`1`) and texts stand alone. */
export const withUnit = (value: string, unit: string): string =>
  unit === "" || unit === "1" || unit === "any" || unit === "text" ? value : `${value}\u00a0${unitText(unit)}`;
