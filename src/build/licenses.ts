import LicensePlugin from "webpack-license-plugin";

/** Licenses that may be shipped; any other stops the build, so that none comes in unseen. */
const ACCEPTED = [
  "MIT",
  "Apache-2.0",
  "ISC",
  "BSD-2-Clause",
  "BSD-3-Clause",
  "0BSD",
  "Unlicense",
  "CC0-1.0",
  "BlueOak-1.0.0",
  // Of typefaces.
  "OFL-1.1",
];

interface Bundled {
  readonly name: string;
  readonly version: string;
  readonly license: string | null;
  readonly licenseText?: string | null;
  readonly noticeText?: string | null;
}

/** Writes licenses.txt beside a bundle: every package in it with its license and notice, as those ask. */
export function licenses() {
  return new LicensePlugin({
    outputFilename: "licenses.json",
    includeNoticeText: true,
    // Its package.json names no license; its LICENSE file and its source do. It holds an identifier and calls nobody.
    licenseOverrides: { "@univerjs/telemetry@0.25.1": "Apache-2.0" },
    unacceptableLicenseTest: (license: string) =>
      !license
        .replace(/[()]/g, "")
        .split(/ OR /)
        .some((one) => ACCEPTED.includes(one)),
    additionalFiles: {
      "licenses.txt": (packages: readonly Bundled[]) => packages.map(section).join(`\n${"-".repeat(72)}\n\n`),
    },
  });
}

function section({ name, version, license, licenseText, noticeText }: Bundled): string {
  return `${name} ${version}, ${license}\n\n${[licenseText, noticeText].filter(Boolean).join("\n\n")}\n`;
}
