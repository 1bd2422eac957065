// The words behind formulaWords.ts under a name that is not replaced; the bundler knows where they are (embeddedAliases).
declare module "formula-words-original" {
  const words: import("@univerjs/core").ILocales[string];
  export default words;
}
