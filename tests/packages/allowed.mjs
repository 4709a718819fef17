/** Licences that the packages may have, each with why it suits a program under the MIT licence. */
export const allowedLicences = {
  MIT: "asks for its notice only",
  ISC: "asks for its notice only",
  "0BSD": "asks for nothing",
  "BSD-2-Clause": "asks for its notice only",
  "BSD-3-Clause": "asks for its notice only",
  "Apache-2.0": "asks for its notice, grants patents",
  "Apache-2.0 AND BSL-1.0": "both ask for their notice only; used in tests",
  "MIT OR Apache-2.0": "taken under MIT",
  "MIT/Apache-2.0": "an older way to write the same; taken under MIT",
  "(MPL-2.0 OR Apache-2.0)": "taken under Apache-2.0",
  "MPL-2.0": "asks for changed files of its own to be open; used as it is, when building and in tests",
  "OFL-1.1": "fonts, handed on as they are",
};

/** Packages under another licence, by name. */
export const allowedPackages = {
  hyperformula: "GPL-3.0-only or bought: README.md says what follows for a built page",
  handsontable: "proprietary with a key for evaluation: README.md says who buys one",
};

/**
 * Faults of packages that somebody has published and that we can live with, by their number (GHSA-...), with why and
 * until when. Everything else that is known of a package fails the tests.
 *
 * @type {Record<string, string>}
 */
export const allowedFaults = {};
