import { accessSync, constants, statSync } from "node:fs";
import { delimiter, join } from "node:path";
import { say } from "../words/say";
import { Misuse } from "./output";

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

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

/**
 * The Chromium or Chrome of this machine; undefined where there is none.
 *
 * @param places folders to look into after those of PATH.
 * @throws Misuse when a variable names a program that cannot be run.
 */
export function findBrowser(
  environment: NodeJS.ProcessEnv = process.env,
  places: readonly string[] = usualPlaces,
): string | undefined {
  for (const variable of variables) {
    const path = environment[variable];
    if (!path) continue;
    if (isProgram(path)) return path;
    throw new Misuse(say`${variable} is "${path}", which is no program that can be run: correct it or unset it.`);
  }
  const onPath = (environment.PATH ?? "").split(delimiter).filter((folder) => folder !== "");
  return [
    ...names.flatMap((name) => onPath.map((folder) => join(folder, name))),
    ...places.flatMap((folder) => namesInPlaces.map((name) => join(folder, name))),
  ].find(isProgram);
}
