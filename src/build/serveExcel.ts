import { getHttpsServerOptions } from "office-addin-dev-certs";
import webpack from "webpack";
import WebpackDevServer from "webpack-dev-server";
import { EXCEL, writeParts } from "./build.ts";
import { DEV_ADDRESS } from "./excelAddress.ts";
import { excelWebpack } from "./excelWebpack.ts";
import { safeHeaders } from "./ownMachine.ts";

// Serves the add-in at the development address and bundles it anew after every change. Excel wants https, so a certificate for this machine is made once;
// the system asks whether to trust it.
writeParts(DEV_ADDRESS, EXCEL);
const compiler = webpack(excelWebpack(EXCEL, "development"))!;
const server = new WebpackDevServer(
  {
    // This machine alone: what is developed is nobody else's.
    host: new URL(DEV_ADDRESS).hostname,
    port: Number(new URL(DEV_ADDRESS).port),
    static: EXCEL,
    hot: false,
    allowedHosts: [new URL(DEV_ADDRESS).hostname],
    // Excel on the web reads functions.json from its own page.
    headers: (request) => ({ "Access-Control-Allow-Origin": "*", ...safeHeaders(request.url ?? "") }),
    server: { type: "https", options: await getHttpsServerOptions() },
  },
  compiler,
);
await server.start();
