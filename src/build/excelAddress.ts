/** Where the add-in is served while it is developed; the manifest is written for this address. */
export const DEV_ADDRESS = "https://localhost:3000";

/**
 * The address the add-in is built for: `--env base=https://...` or `--base https://...`, else the development address.
 *
 * @throws in words when it is no https address: Excel loads nothing else.
 */
export function excelAddress(args: readonly string[]): string {
  const given = args.flatMap((arg, i) => {
    const text = arg === "--env" || arg === "--base" ? `${arg}=${args[i + 1] ?? ""}` : arg;
    return /^--(?:env=base|base)=(.*)$/.exec(text)?.slice(1) ?? [];
  });
  const base = given.at(-1);
  if (base === undefined) return DEV_ADDRESS;
  if (!URL.canParse(base) || new URL(base).protocol !== "https:" || new URL(base).search || new URL(base).hash)
    throw new Error(
      `base: "${base}" is no address that Excel loads from. Type one such as https://example.org/longpoint.`,
    );
  return base.replace(/\/+$/, "");
}

/** The manifest for another address and a version, which is the package's: a manifest has one part more. */
export function manifestFor(manifest: string, base: string, version: string): string {
  return manifest.replaceAll(DEV_ADDRESS, base).replace(/<Version>.*<\/Version>/, `<Version>${version}.0</Version>`);
}
