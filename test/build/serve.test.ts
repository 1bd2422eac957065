import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { request, type IncomingHttpHeaders, type OutgoingHttpHeaders } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Served } from "../../src/build/serve.ts";
import { serve } from "../../src/build/serve.ts";

let home: string;
let served: Served;
beforeAll(async () => {
  home = mkdtempSync(join(tmpdir(), "longpoint-serve-"));
  mkdirSync(join(home, "site/inner"), { recursive: true });
  mkdirSync(join(home, "site-secret"));
  writeFileSync(join(home, "site/index.html"), "start");
  writeFileSync(join(home, "site/inner/a b.js"), "script");
  writeFileSync(join(home, "site/bench.0123abcd.js"), "");
  writeFileSync(join(home, "secret.txt"), "secret");
  writeFileSync(join(home, "site-secret/secret.txt"), "secret");
  served = await serve(join(home, "site"));
});
afterAll(async () => {
  await served.close();
  rmSync(home, { recursive: true });
});

/** Asks for a path exactly as it is written: fetch would tidy it first. */
function ask(
  path: string,
  method = "GET",
  headers: OutgoingHttpHeaders = {},
): Promise<{ status: number; type: string; body: string; headers: IncomingHttpHeaders }> {
  return new Promise((resolve, reject) => {
    const { hostname, port } = new URL(served.url);
    request({ hostname, port, path, method, headers }, (response) => {
      let body = "";
      response.on("data", (chunk) => (body += String(chunk)));
      response.on("end", () =>
        resolve({
          status: response.statusCode!,
          type: response.headers["content-type"] ?? "",
          body,
          headers: response.headers,
        }),
      );
    })
      .on("error", reject)
      .end();
  });
}

describe("serve", () => {
  it("listens to this machine alone, on a free port", () => {
    expect(served.url).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
  });
  it("gives files with their type, the folder's page for the folder", async () => {
    expect(await ask("/")).toMatchObject({ status: 200, type: "text/html;charset=utf-8", body: "start" });
    expect(await ask("/inner/a%20b.js?v=1")).toMatchObject({ status: 200, type: "text/javascript", body: "script" });
    expect(await ask("/", "HEAD")).toMatchObject({ status: 200, type: "text/html;charset=utf-8", body: "" });
  });
  it("has a page asked for again each time, and a file with a hash in its name never", async () => {
    expect((await ask("/bench.0123abcd.js")).headers["cache-control"]).toBe("max-age=31536000, immutable");
    const { headers } = await ask("/");
    expect(headers["cache-control"]).toBe("no-cache");
    expect((await ask("/", "GET", { "if-none-match": headers.etag! })).status).toBe(304);
    writeFileSync(join(home, "site/index.html"), "built anew");
    expect(await ask("/", "GET", { "if-none-match": headers.etag! })).toMatchObject({
      status: 200,
      body: "built anew",
    });
  });
  it("says so where there is nothing", async () => {
    expect(await ask("/missing")).toMatchObject({ status: 404, type: "text/plain", body: "There is nothing here." });
  });
  it.each([
    "/../secret.txt",
    "/%2e%2e/secret.txt",
    "/..%2fsecret.txt",
    "/inner/..%2f..%2fsecret.txt",
    "/..%2fsite-secret/secret.txt",
    "/missing",
    "/inner",
    "/inner/",
    "/%zz",
    "/a%00b",
  ])("has nothing at %s", async (path) => {
    const { status, body } = await ask(path);
    expect({ status, leaked: body.includes("secret") }).toEqual({ status: 404, leaked: false });
  });
  it("only reads", async () => {
    expect((await ask("/", "POST")).status).toBe(405);
  });
});
