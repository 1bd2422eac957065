import { EsbuildPlugin } from "esbuild-loader";
import { resolve } from "node:path";
import MiniCssExtractPlugin from "mini-css-extract-plugin";
import type { Configuration } from "webpack";
import { licenses } from "./licenses.ts";
import { pageRules } from "./pageRules.ts";
import { withoutDocs } from "./withoutDocs.ts";

/** The bundler's set-up for the Excel build: one script for pane and functions, which share a runtime, and one for each page that Excel opens beside the pane. */
export function excelWebpack(
  folder: string,
  made: "production" | "maps" | "development" = "production",
): Configuration {
  return {
    mode: made === "development" ? made : "production",
    context: resolve("."),
    target: ["web", "es2022"],
    devtool: ({ production: false, maps: "hidden-source-map", development: "inline-source-map" } as const)[made],
    entry: {
      pane: "./src/pages/excel/paneMain.ts",
      print: "./src/pages/packet/printMain.ts",
      drawing: "./src/pages/excel/drawingMain.ts",
    },
    output: {
      path: resolve(folder),
      filename: "[name].js",
      // Loaded on demand. The hash in the address keeps an old one from being taken out of a cache.
      chunkFilename: "pane.[name].js?[contenthash:8]",
      publicPath: "",
      globalObject: "globalThis",
    },
    module: {
      rules: [
        ...pageRules,
        {
          test: /\.ts$/,
          include: resolve("functions"),
          enforce: "pre",
          loader: resolve("src/build/transformLoader.mjs"),
          options: { transform: withoutDocs },
        },
      ],
    },
    // "..." is webpack's own minifier, which makes the smaller script here; esbuild does the style sheet.
    optimization: { minimizer: ["...", new EsbuildPlugin({ include: /\.css$/, css: true })] },
    plugins: [new MiniCssExtractPlugin({ filename: "[name].css" }), licenses()],
    performance: false,
  };
}
