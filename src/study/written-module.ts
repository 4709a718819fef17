import { functionText } from "../formula/text";
import { catalogue } from "../functions";

/** What the build puts in place of `kernel/written.ts`: every named function as plain code. */
export const writtenModule = (): string =>
  [
    'import { convertUnit } from "../../units/convert";',
    "export const written = new Map([",
    ...catalogue.map((definition) => `[${JSON.stringify(definition.name)},${functionText(definition)}],`),
    "]);",
  ].join("\n");
