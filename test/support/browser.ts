import { accessSync, constants, existsSync, mkdirSync, writeFileSync } from "node:fs";
import { delimiter, join, resolve } from "node:path";
export interface Browser {
  executablePath: string;
  env: Record<string, string>;
}
/** The Chromium to test in: the one named by LAP_LEDGER_BROWSER ("shipped" for the last resort), else one
 * installed, else the one inside a development dependency (Linux x64), unpacked once. */
export async function findBrowser(): Promise<Browser> {
  const env = Object.fromEntries(
    Object.entries(process.env).flatMap(([k, v]) => (v === undefined ? [] : [[k, v]])),
  );
  const named = env["LAP_LEDGER_BROWSER"];
  const executablePath = named === undefined ? installed(env["PATH"] ?? "") : named;
  return executablePath === undefined || executablePath === "shipped"
    ? shipped(env)
    : { executablePath, env };
}
function installed(path: string): string | undefined {
  const names = ["chromium", "chromium-browser", "google-chrome-stable", "google-chrome"];
  const onPath = path.split(delimiter).flatMap((folder) => names.map((name) => join(folder, name)));
  return ["/usr/bin/chromium", ...onPath].find(runnable);
}
function runnable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
/** Each Playwright worker calls this again; only the first caller, the main process, unpacks. */
async function shipped(env: Record<string, string>): Promise<Browser> {
  const packed = resolve("node_modules/@sparticuz/chromium/bin");
  const folder = resolve("node_modules/.cache/chromium"); // npm ci empties node_modules, so never stale
  const ready = join(folder, "ready");
  if (!existsSync(ready)) {
    const { default: chromium, inflate } = await import("@sparticuz/chromium");
    mkdirSync(folder, { recursive: true });
    process.env["TMPDIR"] = folder; // the package unpacks into the temporary folder
    await chromium.executablePath(packed);
    await inflate(join(packed, "al2023.tar.br")); // libraries a bare system lacks: NSS, NSPR, expat
    if (env["TMPDIR"] === undefined) delete process.env["TMPDIR"];
    else process.env["TMPDIR"] = env["TMPDIR"];
    writeFileSync(join(folder, "fonts.conf"), `<fontconfig><dir>${folder}/fonts</dir></fontconfig>`);
    writeFileSync(ready, "");
  }
  return {
    executablePath: join(folder, "chromium"),
    env: { ...env, LD_LIBRARY_PATH: join(folder, "al2023/lib"), FONTCONFIG_FILE: join(folder, "fonts.conf") },
  };
}
