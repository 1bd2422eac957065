import MiniCssExtractPlugin from "mini-css-extract-plugin";
import type { RuleSetRule } from "webpack";

/** How the bundler reads what every page is made of. */
export const pageRules: readonly RuleSetRule[] = [
  {
    test: /\.tsx?$/,
    exclude: /node_modules/,
    loader: "esbuild-loader",
    options: { target: "es2022", jsx: "automatic", jsxImportSource: "preact" },
  },
  { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] },
  // Beside the page, for the browser to load once the page is painted.
  { test: /\.woff2$/, type: "asset/resource", generator: { filename: "[name][ext]" } },
];
