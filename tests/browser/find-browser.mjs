/**
 * Finds the Chromium or Chrome of this machine. Plain JavaScript without libraries, because `.ci/run` asks it before
 * anything is installed: run on its own it prints the path, or the sentence and exit code 1.
 */
import { accessSync, constants, statSync } from "node:fs";
import { delimiter, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";

/** In order; both hold the path of the program. */
const variables = ["ATHWART_BROWSER", "CHROME_PATH"];

const names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];

const usualPlaces = [
  "/usr/bin",
  "/usr/local/bin",
  "/snap/bin",
  "/usr/lib/chromium",
  "/opt/google/chrome",
  "/Applications/Chromium.app/Contents/MacOS",
  "/Applications/Google Chrome.app/Contents/MacOS",
];
const namesInPlaces = [...names, "chrome", "Chromium", "Google Chrome"];

/** @param {string} path */
function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

/**
 * @param {NodeJS.ProcessEnv} environment
 * @param {readonly string[]} places folders to look into after those of PATH
 * @returns {string} the path of the program
 * @throws {Error} one sentence with the command that installs a browser, or naming the variable that is wrong
 */
export function findBrowser(environment = process.env, places = usualPlaces) {
  for (const variable of variables) {
    const path = environment[variable];
    if (!path) continue;
    if (isProgram(path)) return path;
    throw new Error(`${variable} is "${path}", which is no program that can be run: correct it or unset it.`);
  }
  const onPath = (environment.PATH ?? "").split(delimiter).filter((folder) => folder !== "");
  const candidates = [
    ...names.flatMap((name) => onPath.map((folder) => join(folder, name))),
    ...places.flatMap((folder) => namesInPlaces.map((name) => join(folder, name))),
  ];
  const found = candidates.find(isProgram);
  if (found !== undefined) return found;
  throw new Error(
    "No Chromium or Chrome was found for the browser tests: install one with `apt-get install -y chromium`, " +
      "or put the path of one into ATHWART_BROWSER.",
  );
}

if (process.argv[1] !== undefined && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  try {
    console.log(findBrowser());
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  }
}
