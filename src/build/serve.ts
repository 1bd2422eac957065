import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import sirv from "sirv";
import { forOwnMachine, safeHeaders } from "./ownMachine.ts";

// A page changes with every build; a file with a hash of its content in its name never does.
const HASHED = /\.[0-9a-f]{8}\.\w+$/;

/** A folder served to this machine alone. */
export interface Served {
  readonly url: string;
  close(): Promise<void>;
}

/** Serves the files of a folder on this machine, on a free port unless one is given. */
export async function serve(folder: string, port = 0): Promise<Served> {
  const files = sirv(folder, {
    // Looks on the disk for every request: the pages may be built anew meanwhile.
    dev: true,
    etag: true,
    // As the build has put them beside the others.
    brotli: true,
    gzip: true,
    setHeaders(response, path) {
      for (const [name, value] of Object.entries(safeHeaders(path))) response.setHeader(name, value);
      if (HASHED.test(path)) response.setHeader("cache-control", "max-age=31536000, immutable");
    },
  });
  const server = createServer((request, response) => {
    if (!forOwnMachine(request.headers.host))
      return response.writeHead(403, { "content-type": "text/plain" }).end("This server answers its own machine only.");
    if (request.method !== "GET" && request.method !== "HEAD") return response.writeHead(405).end();
    files(request, response, () => {
      response.writeHead(404, { "content-type": "text/plain" }).end("There is nothing here.");
    });
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
