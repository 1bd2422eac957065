import { readFileSync } from "node:fs";
import HtmlWebpackPlugin from "html-webpack-plugin";
import MiniCssExtractPlugin from "mini-css-extract-plugin";
import { join } from "node:path";
import TerserPlugin from "terser-webpack-plugin";
import type { Configuration } from "webpack";
import webpack from "webpack";
import { closedChannels } from "./closedChannels.ts";
import { embeddedAliases } from "./embeddedAliases.ts";
import { licenses } from "./licenses.ts";
import { pageRules } from "./pageRules.ts";
import { shownAtOnce } from "./shownAtOnce.ts";
import { withoutPictures } from "./withoutPictures.ts";

const HYPHENATION = "src/hosts/embedded/replaced/hyphenation.ts";

/** How webpack makes the bench page. esbuild does the small work: it is four times as fast here as webpack's own minifier. */
export function benchConfig(root: string, outDir: string): Configuration {
  const page = join(root, "src/pages/bench");
  return {
    mode: "production",
    context: root,
    target: ["web", "es2022"],
    entry: {
      bench: join(page, "main.ts"),
      print: join(root, "src/pages/packet/printMain.ts"),
      saw: join(root, "src/pages/saw/sawMain.tsx"),
    },
    output: { path: outDir, filename: "[name].[contenthash:8].js", clean: true, publicPath: "" },
    resolve: { extensions: [".ts", ".tsx", ".js"], alias: embeddedAliases(root) },
    module: {
      rules: [
        ...pageRules,
        {
          test: /@univerjs.(docs|sheets)-ui.lib.es.index\.js$/,
          loader: join(root, "src/build/transformLoader.mjs"),
          options: { transform: withoutPictures },
        },
        {
          test: /@univerjs.core.lib.es.index\.js$/,
          loader: join(root, "src/build/transformLoader.mjs"),
          options: { transform: closedChannels },
        },
        {
          test: /@univerjs.ui.lib.es.index\.js$/,
          loader: join(root, "src/build/transformLoader.mjs"),
          options: { transform: shownAtOnce },
        },
      ],
    },
    optimization: {
      // The sheet's maker changes less often than we do: what is compressed and kept of it stays.
      splitChunks: {
        cacheGroups: {
          engine: { test: /node_modules/, name: "engine", chunks: ({ name }) => name === "sheet", enforce: true },
        },
      },
      minimizer: [
        new TerserPlugin({
          minify: TerserPlugin.esbuildMinify,
          extractComments: false,
          terserOptions: { legalComments: "none" },
        }),
      ],
    },
    performance: { hints: false },
    plugins: [
      // The lists by which the sheet parts words: see hyphenation.ts.
      new webpack.NormalModuleReplacementPlugin(
        /^\.\/[\w-]+-[\w-]{8}\.js$/,
        (asked: { context: string; request: string }) => {
          if (/@univerjs.engine-render.lib.es$/.test(asked.context)) asked.request = join(root, HYPHENATION);
        },
      ),
      new MiniCssExtractPlugin({ filename: "[name].[contenthash:8].css" }),
      new HtmlWebpackPlugin({ template: join(page, "index.html"), chunks: ["bench"], minify: false }),
      new HtmlWebpackPlugin({
        template: join(root, "src/pages/saw/saw.html"),
        filename: "saw.html",
        chunks: ["saw"],
        minify: false,
      }),
      new HtmlWebpackPlugin({
        // The Excel build copies the page as it is; here the script has a hash in its name.
        templateContent: readFileSync(join(root, "src/pages/packet/print.html"), "utf8").replace(/<script .*/, ""),
        filename: "print.html",
        chunks: ["print"],
        minify: false,
      }),
      licenses(),
    ],
    stats: "errors-warnings",
  };
}
