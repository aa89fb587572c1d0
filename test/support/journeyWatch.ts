import type { BrowserContext, Page } from "@playwright/test";

declare global {
  interface Window {
    /** Set by `watch`: tells the test what broke the policy. */
    tellPolicy?: (what: string) => void;
  }
}

/** Notes all that must never happen in a context: requests to elsewhere, broken policy, console errors, dialogs. */
export async function watch(context: BrowserContext, baseURL: string): Promise<string[]> {
  const seen: string[] = [];
  const origin = baseURL === "" ? "" : new URL(baseURL).origin;
  await context.exposeFunction("tellPolicy", (what: string) => seen.push(`policy broken: ${what}`));
  await context.addInitScript(() => {
    document.addEventListener("securitypolicyviolation", (event) =>
      window.tellPolicy?.(`${event.violatedDirective} ${event.blockedURI}`),
    );
  });
  context.on("request", (request) => {
    const url = request.url();
    const isHere = url.startsWith(`${origin}/`) || /^(data|blob):/.test(url);
    if (origin !== "" && !isHere) seen.push(`request to elsewhere: ${url}`);
  });
  context.on("weberror", (error) => seen.push(`error: ${error.error().message}`));
  context.on("console", (message) => {
    if (message.type() === "error") seen.push(`console: ${message.text()} (${message.location().url})`);
  });
  context.on("page", (page) => watchPage(page, seen));
  for (const page of context.pages()) watchPage(page, seen);
  return seen;
}

function watchPage(page: Page, seen: string[]): void {
  page.on("dialog", (dialog) => {
    seen.push(`dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  page.on("websocket", (socket) => seen.push(`socket: ${socket.url()}`));
}
