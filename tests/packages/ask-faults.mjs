import { spawn } from "node:child_process";
import { allowedFaults } from "./allowed.mjs";

/**
 * What the registry says of the packages that are installed.
 *
 * @typedef {{ kind: "clean" | "faults" | "silent", sentence: string }} Faults
 */

/** @param {string} text */
function parsed(text) {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/**
 * @param {string} output of `npm audit --json`
 * @returns {Faults}
 */
export function readFaults(output) {
  const answer = parsed(output);
  if (answer?.vulnerabilities === undefined) {
    const code = answer?.statusCode ?? answer?.error?.code ?? "no answer";
    return { kind: "silent", sentence: `could not be asked: the registry does not answer such questions (${code})` };
  }
  const found = Object.entries(answer.vulnerabilities).flatMap(([name, { via = [] }]) =>
    via.flatMap((/** @type {string | { url?: string, title?: string }} */ one) => {
      if (typeof one === "string") return [];
      const number = /GHSA-[\w-]+/.exec(one.url ?? "")?.[0] ?? "without a number";
      return number in allowedFaults ? [] : [`${name}: ${one.title ?? "a fault"} (${number})`];
    }),
  );
  return found.length > 0
    ? { kind: "faults", sentence: found.join("\n") }
    : { kind: "clean", sentence: "none that is not allowed with a reason" };
}

/**
 * Asks the registry for published faults of the packages in the lock file.
 *
 * @param {string} folder
 * @returns {Promise<Faults>}
 */
export function askFaults(folder) {
  return new Promise((done) => {
    let output = "";
    const child = spawn("npm", ["audit", "--json", "--fetch-retries=0"], {
      cwd: folder,
      shell: process.platform === "win32",
      timeout: 60_000,
    });
    child.stdout.on("data", (chunk) => {
      output += chunk;
    });
    child.on("error", () => done(readFaults("")));
    child.on("close", () => done(readFaults(output)));
  });
}
