import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, resolve, sep } from "node:path";

const types: Readonly<Record<string, string>> = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".css": "text/css",
  ".json": "application/json",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".woff2": "font/woff2",
  ".webmanifest": "application/manifest+json",
};

/** Where the build under test lies: `dist`, or the one named for a second run beside the first. */
export const buildFolder = resolve(process.env["LAP_LEDGER_BUILD"] ?? "dist");

/** A build served as any static host would, under a path, from a folder that can be swapped for another build. */
export interface Served {
  readonly url: string;
  /** From now on answers come from this folder. */
  readonly swap: (folder: string) => void;
  readonly close: () => Promise<void>;
}

/** Serves a folder under a path ("/some/path/"); what is not there is 404. */
export async function serve(folder: string, path: string): Promise<Served> {
  let root = folder;
  const server = createServer(async (request, response) => {
    const asked = decodeURIComponent(new URL(request.url ?? "/", "http://here").pathname);
    const rest = asked.startsWith(path) ? asked.slice(path.length) : undefined;
    const file = rest === undefined ? undefined : resolve(root, rest === "" ? "index.html" : rest);
    try {
      if (file === undefined || !file.startsWith(root + sep)) throw new Error("not under the path");
      const body = await readFile(file);
      const type = types[extname(file)] ?? "application/octet-stream";
      response.writeHead(200, { "content-type": type, "cache-control": "no-cache" }).end(body);
    } catch {
      response.writeHead(404, { "content-type": "text/plain" }).end("not here");
    }
  });
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${port}${path}`,
    swap: (next) => {
      root = next;
    },
    close: () =>
      new Promise((done) => {
        server.closeAllConnections();
        server.close(() => done());
      }),
  };
}
