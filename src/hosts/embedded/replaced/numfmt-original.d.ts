// The library behind numberTexts.ts under a name that is not replaced; the bundler knows where it is (embeddedAliases).
declare module "numfmt-original" {
  export * from "numfmt";
}
