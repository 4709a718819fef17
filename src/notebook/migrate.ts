import { say } from "../words/say";
import { type About, aboutSchema, currentVersion } from "./about";
import { Refusal } from "./refusal";

type Fields = Readonly<Record<string, unknown>>;

/** One step a version: `steps[n]` makes version n + 1 of version n. */
const steps: readonly ((old: Fields) => Fields)[] = [
  // Version 0 had no version field; nothing else differs.
  (old) => ({ ...old, version: 1 }),
];

/** The line at which reading stopped, where the machine's message tells; it is worded differently everywhere. */
function faultLine(text: string, message: string): number | undefined {
  const line = /line (\d+)/.exec(message);
  if (line) return Number(line[1]);
  const position = /position (\d+)/.exec(message);
  return position ? text.slice(0, Number(position[1])).split("\n").length : undefined;
}

const deepest = 100;

/** Whether lists and objects stand too far inside one another to be written again. */
function isTooDeep(value: unknown): boolean {
  let layer: unknown[] = [value];
  for (let depth = 0; layer.length > 0; depth++) {
    if (depth > deepest) return true;
    layer = layer.flatMap((one) => (typeof one === "object" && one !== null ? Object.values(one) : []));
  }
  return false;
}

function parse(text: string): unknown {
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch (cause) {
    const line = faultLine(text, cause instanceof Error ? cause.message : "");
    throw new Refusal(
      say`notebook.json is not valid JSON${line === undefined ? "" : say`, line ${line}`}: mend it there, or take an earlier copy.`,
    );
  }
  if (isTooDeep(value)) {
    throw new Refusal(
      say`notebook.json holds lists inside one another more than ${deepest} deep; it cannot be a notebook's.`,
    );
  }
  return value;
}

/**
 * Reads notebook.json, brings it to the present version and checks it. Unknown fields are kept.
 *
 * @throws Refusal that names the field, for damaged JSON, a wrong field or a version that is newer than ours.
 */
export function readAbout(text: string): About {
  const raw = parse(text);
  if (typeof raw !== "object" || raw === null || Array.isArray(raw)) {
    throw new Refusal(say`notebook.json must hold one object with a title and a list of pages.`);
  }
  let fields = raw as Fields;
  const version = fields.version ?? 0;
  if (typeof version !== "number" || !Number.isInteger(version) || version < 0) {
    throw new Refusal(
      say`notebook.json, version: ${JSON.stringify(version)} is not a version (this program knows 0 to ${currentVersion}).`,
    );
  }
  if (version > currentVersion) {
    throw new Refusal(
      say`This notebook has version ${version}; this program knows up to ${currentVersion}: open it with a newer one.`,
    );
  }
  for (const step of steps.slice(version)) fields = step(fields);
  const checked = aboutSchema.safeParse(fields);
  // The checked copy has its fields in the schema's order; the file's own order is kept.
  if (checked.success) return fields as About;
  const [issue] = checked.error.issues;
  throw new Refusal(say`notebook.json, ${issue?.path.join(".") || "top"}: ${issue?.message ?? say`not as expected`}.`);
}

/** notebook.json as text: two spaces, a line end at the end. */
export const printAbout = (about: About): string => `${JSON.stringify(about, undefined, 2)}\n`;
