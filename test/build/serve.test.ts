import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { request, type IncomingHttpHeaders, type OutgoingHttpHeaders } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { compress } from "../../src/build/compress.ts";
import { contentPolicy } from "../../src/build/contentPolicy.ts";
import type { Served } from "../../src/build/serve.ts";
import { serve } from "../../src/build/serve.ts";

let home: string;
let served: Served;
const SCRIPT = "measure(twice);".repeat(200);
beforeAll(async () => {
  home = mkdtempSync(join(tmpdir(), "longpoint-serve-"));
  mkdirSync(join(home, "site/inner"), { recursive: true });
  mkdirSync(join(home, "site-secret"));
  writeFileSync(join(home, "site/index.html"), "start");
  writeFileSync(join(home, "site/pane.html"), "pane");
  writeFileSync(join(home, "site/inner/a b.js"), "script");
  writeFileSync(join(home, "site/bench.0123abcd.js"), "");
  writeFileSync(join(home, "site/large.0123abcd.js"), SCRIPT);
  await compress(join(home, "site"), join(home, "kept"));
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
  it("sends what the build has compressed to whoever takes it, with the type and the age of the file itself", async () => {
    const get = (encodings: string) => ask("/large.0123abcd.js", "GET", { "accept-encoding": encodings });
    expect(await get("")).toMatchObject({ body: SCRIPT, headers: { "content-length": String(SCRIPT.length) } });
    for (const [encodings, way] of [
      ["gzip, deflate, br", "br"],
      ["gzip", "gzip"],
    ] as const) {
      const { type, headers } = await get(encodings);
      expect([type, headers["content-encoding"], headers["vary"]]).toEqual(["text/javascript", way, "Accept-Encoding"]);
      expect(headers["cache-control"]).toContain("immutable");
      expect(Number(headers["content-length"])).toBeLessThan(SCRIPT.length / 10);
      // What a browser makes of it.
      expect(
        await (await fetch(`${served.url}large.0123abcd.js`, { headers: { "accept-encoding": encodings } })).text(),
      ).toBe(SCRIPT);
    }
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
  it.each(["roofs.example.org", "localhost.example.org:80", "127.0.0.1.example.org", "10.0.0.7", "localhost:1:2"])(
    "does not answer to the name %s: a page elsewhere may have had its own name answered with this machine",
    async (host) => {
      const { status, body } = await ask("/", "GET", { host });
      expect({ status, leaked: body.includes("start") }).toEqual({ status: 403, leaked: false });
    },
  );
  it.each(["localhost", "127.0.0.1:1234", "LOCALHOST:80", "[::1]:80"])("answers to %s", async (host) => {
    expect((await ask("/", "GET", { host })).status).toBe(200);
  });
  it("lets no page be framed, and none ask elsewhere", async () => {
    const { headers } = await ask("/");
    expect(headers["content-security-policy"]).toBe(`${contentPolicy()}; frame-ancestors 'none'`);
    expect(headers["x-frame-options"]).toBe("DENY");
  });
  it("lets Excel frame its pane, which may load Office.js", async () => {
    const { headers } = await ask("/pane.html");
    expect(headers["content-security-policy"]).toBe(contentPolicy({ office: true }));
    expect(headers["x-frame-options"]).toBeUndefined();
  });
  it.each([
    ["bench/index.html", contentPolicy()],
    ["excel/pane.html", contentPolicy({ office: true })],
    ["packet/print.html", contentPolicy()],
    ["saw/saw.html", contentPolicy()],
  ])("sends what %s itself says", (page, policy) => {
    expect(readFileSync(`src/pages/${page}`, "utf8")).toContain(
      `<meta http-equiv="Content-Security-Policy" content="${policy}"`,
    );
  });
  it("only reads", async () => {
    expect((await ask("/", "POST")).status).toBe(405);
  });
});
