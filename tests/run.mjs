/**
 * `npm test`: everything that must hold, one after the other. Goes on after a failure, prints the output of whatever
 * failed, and ends with the one line `N passed, N failed`. Each check and build counts as one, each test as one; a test
 * that was skipped has failed. The builds come before the tests that use them.
 */
import { spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { findBrowser } from "./browser/find-browser.mjs";
import { askFaults } from "./packages/ask-faults.mjs";

const top = resolve(import.meta.dirname, "..");
const reports = mkdtempSync(join(tmpdir(), "athwart-tests-"));
let passed = 0;
let failed = 0;
/** @type {string[]} */
const failures = [];

/** @param {string} title @param {string} [details] */
function fail(title, details) {
  failed += 1;
  failures.push(title);
  if (details !== undefined) console.log(`\nFAILED: ${title}\n${details.trimEnd()}\n`);
}

/**
 * @param {string} program one of the project's own, in node_modules/.bin
 * @param {readonly string[]} args
 * @returns {Promise<{ code: number, output: string }>} code 1 as well when it cannot be started or is killed
 */
function run(program, args) {
  return new Promise((done) => {
    let output = "";
    const environment = { ...process.env, NO_COLOR: "1", FORCE_COLOR: undefined, CI: "1" };
    const child = spawn(join(top, "node_modules/.bin", program), args, { cwd: top, env: environment });
    const add = (/** @type {Buffer} */ chunk) => {
      output += chunk.toString();
    };
    child.stdout.on("data", add);
    child.stderr.on("data", add);
    child.on("error", (error) => done({ code: 1, output: `${output}${error.message}` }));
    child.on("close", (code) => done({ code: code ?? 1, output }));
  });
}

/**
 * @param {string} title
 * @param {string} program
 * @param {readonly string[]} args
 * @returns {Promise<boolean>} whether it passed
 */
async function check(title, program, args) {
  const began = Date.now();
  const { code, output } = await run(program, args);
  if (code === 0) passed += 1;
  else fail(title, output);
  console.log(`${title}: ${code === 0 ? "passed" : "failed"}, ${seconds(began)}`);
  return code === 0;
}

/**
 * @typedef {{ fullName: string, status: string }} TestReport
 * @typedef {{ name: string, status: string, assertionResults: TestReport[] }} FileReport
 */

/**
 * @param {string} title
 * @param {string} project of the test runner
 */
async function tests(title, project) {
  const began = Date.now();
  const before = { passed, failed };
  const report = join(reports, `${project}.json`);
  const { code, output } = await run("vitest", [
    "run",
    `--project=${project}`,
    "--reporter=dot",
    "--reporter=json",
    `--outputFile.json=${report}`,
  ]);
  for (const file of readReport(report)) countFile(file);
  if (passed + failed === before.passed + before.failed) fail(`${title}: none ran`);
  else if (code !== 0 && failed === before.failed) fail(`${title}: an error outside of any test`);
  if (failed > before.failed) console.log(output);
  console.log(`${title}: ${passed - before.passed} passed, ${failed - before.failed} failed, ${seconds(began)}`);
}

/**
 * @param {string} path
 * @returns {FileReport[]} empty when the test runner fell over before it could report
 */
function readReport(path) {
  try {
    return JSON.parse(readFileSync(path, "utf8")).testResults;
  } catch {
    return [];
  }
}

/** @param {FileReport} file */
function countFile(file) {
  const name = file.name.replace(`${top}/`, "");
  for (const { fullName, status } of file.assertionResults) {
    if (status === "passed") passed += 1;
    else fail(`${name}: ${fullName}${status === "failed" ? "" : ` (${status})`}`);
  }
  const hasFailedTest = file.assertionResults.some(({ status }) => status === "failed");
  if (file.status === "failed" && !hasFailedTest) fail(`${name}: could not be run`);
  else if (file.assertionResults.length === 0) fail(`${name}: holds no test`);
}

/** Where the registry does not say what it knows of the packages, that is said and counts as neither. */
async function packageFaults() {
  const { kind, sentence } = await askFaults(top);
  if (kind === "clean") passed += 1;
  if (kind === "faults") fail("published faults of packages", sentence);
  else console.log(`published faults of packages: ${sentence}`);
}

/** @param {number} began */
const seconds = (began) => `${((Date.now() - began) / 1000).toFixed(1)} s`;

await check("types", "tsc", []);
await check("format and lint", "biome", ["ci", "--colors=off", "."]);
await packageFaults();
await check("unused code", "knip", ["--no-progress"]);
const pageIsBuilt = await check("page build", "vite", ["build", "--logLevel", "warn"]);
await check("terminal build", "vite", ["build", "--mode", "terminal", "--logLevel", "warn"]);
await tests("tests", "unit");

let browserFault = pageIsBuilt ? "" : "Not run, because the page could not be built.";
try {
  findBrowser();
} catch (error) {
  browserFault = error instanceof Error ? error.message : String(error);
}
if (browserFault === "") await tests("browser tests", "browser");
else fail("browser tests", browserFault);

rmSync(reports, { recursive: true, force: true });
if (failures.length > 0) console.log(`\nFailed:\n${failures.map((title) => `  ${title}`).join("\n")}\n`);
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
