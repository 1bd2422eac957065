import { getHttpsServerOptions } from "office-addin-dev-certs";
import webpack from "webpack";
import WebpackDevServer from "webpack-dev-server";
import { writeParts } from "./build.ts";
import { DEV_ADDRESS } from "./excelAddress.ts";
import { excelWebpack } from "./excelWebpack.ts";
import { safeHeaders } from "./ownMachine.ts";

// Serves the add-in at the development address and bundles it anew after every change. Excel wants https, so a certificate for this machine is made once;
// the system asks whether to trust it.
writeParts(DEV_ADDRESS, "dist");
const compiler = webpack(excelWebpack("dist", "development"))!;
const server = new WebpackDevServer(
  {
    port: Number(new URL(DEV_ADDRESS).port),
    static: "dist",
    hot: false,
    // This machine alone; the server refuses other names in the Host header, too.
    host: "localhost",
    allowedHosts: ["localhost"],
    // Excel on the web reads functions.json from its own page.
    headers: (request) => ({ "Access-Control-Allow-Origin": "*", ...safeHeaders(request.url ?? "") }),
    server: { type: "https", options: await getHttpsServerOptions() },
  },
  compiler,
);
await server.start();
