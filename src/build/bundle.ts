import type { Configuration } from "webpack";
import webpack from "webpack";

/** Runs webpack once. Rejects with its errors, so that a broken page is never taken for a built one. */
export function bundle(configuration: Configuration): Promise<void> {
  return new Promise((resolve, reject) => {
    const compiler = webpack(configuration);
    if (!compiler) return reject(new Error("webpack did not start."));
    compiler.run((error, stats) => {
      compiler.close(() => {
        if (error) reject(error);
        else if (stats?.hasErrors()) reject(new Error(stats.toString("errors-only")));
        else resolve();
      });
    });
  });
}
