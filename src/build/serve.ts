import { createReadStream } from "node:fs";
import { stat } from "node:fs/promises";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize, sep } from "node:path";
import { forOwnMachine, safeHeaders } from "./ownMachine.ts";

const TYPES: Record<string, string> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".xml": "application/xml; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
  ".wasm": "application/wasm",
};

// A page changes with every build; a file with a hash of its content in its name never does.
const HASHED = /\.[0-9a-f]{8}\.\w+$/;

/** A folder served to this machine alone. */
export interface Served {
  readonly url: string;
  close(): Promise<void>;
}

/** Serves the files of a folder on this machine, on a free port unless one is given. */
export async function serve(folder: string, port = 0): Promise<Served> {
  const server = createServer((request, response) => {
    void (async () => {
      if (!forOwnMachine(request.headers.host))
        return response
          .writeHead(403, { "content-type": "text/plain" })
          .end("This server answers its own machine only.");
      if (request.method !== "GET" && request.method !== "HEAD") return response.writeHead(405).end();
      const file = await fileFor(folder, request.url ?? "/");
      if (!file) return response.writeHead(404, { "content-type": "text/plain" }).end("There is nothing here.");
      response.writeHead(200, {
        ...safeHeaders(file.replaceAll("\\", "/")),
        "content-type": TYPES[extname(file)] ?? "application/octet-stream",
        "cache-control": HASHED.test(file) ? "max-age=31536000, immutable" : "no-cache",
      });
      if (request.method === "HEAD") return response.end();
      createReadStream(file)
        .on("error", () => response.destroy())
        .pipe(response);
    })();
  });
  await new Promise<void>((resolve, reject) => server.once("error", reject).listen(port, "127.0.0.1", resolve));
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

/** The file that a request names, or null: never one outside the folder. */
async function fileFor(folder: string, url: string): Promise<string | null> {
  try {
    const { pathname } = new URL(url, "http://localhost");
    const file = normalize(join(folder, decodeURIComponent(pathname), pathname.endsWith("/") ? "index.html" : ""));
    if (file.includes("\0") || !file.startsWith(normalize(folder) + sep)) return null;
    return (await stat(file)).isFile() ? file : null;
  } catch {
    return null;
  }
}
