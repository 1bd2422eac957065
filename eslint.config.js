import tseslint from "typescript-eslint";

/** ESLint's own rules that find mistakes the compiler does not. */
const mistakes = [
  "no-async-promise-executor",
  "no-compare-neg-zero",
  "no-cond-assign",
  "no-constant-condition",
  "no-debugger",
  "no-dupe-else-if",
  "no-duplicate-case",
  "no-empty",
  "no-empty-character-class",
  "no-empty-pattern",
  "no-ex-assign",
  "no-fallthrough",
  "no-loss-of-precision",
  "no-misleading-character-class",
  "no-prototype-builtins",
  "no-regex-spaces",
  "no-self-assign",
  "no-sparse-arrays",
  "no-unsafe-finally",
  "no-unsafe-optional-chaining",
  "no-unused-labels",
  "no-useless-catch",
  "no-useless-escape",
  "require-yield",
  "use-isnan",
  "valid-typeof",
];

export default tseslint.config(
  { ignores: ["dist/", "node_modules/", ".cache/"] },
  ...tseslint.configs.recommended,
  {
    linterOptions: { reportUnusedDisableDirectives: "error" },
    rules: {
      ...Object.fromEntries(mistakes.map((rule) => [rule, "error"])),
      eqeqeq: "error",
      "no-console": "error",
      "no-var": "error",
      "object-shorthand": "error",
      "prefer-const": "error",
      // typeof import("...") is the one way to name the type of a module that is loaded later.
      "@typescript-eslint/consistent-type-imports": ["error", { disallowTypeAnnotations: false }],
      // A list of parameters has a type of its own for each place; only `any` lets it be held as one.
      "@typescript-eslint/no-explicit-any": "off",
      // noUncheckedIndexedAccess makes a proven index say so.
      "@typescript-eslint/no-non-null-assertion": "off",
      // The compiler reports these (noUnusedLocals, noUnusedParameters).
      "@typescript-eslint/no-unused-vars": "off",
    },
  },
  {
    // Where people read what a program prints.
    files: [
      "src/hosts/terminal/**",
      "src/build/**",
      "test/run.ts",
      "test/bench/**",
      "test/attack/**",
      "test/mutation/**",
    ],
    rules: { "no-console": "off" },
  },
);
