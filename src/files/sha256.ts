import type { Sha256 } from "./backup.ts";

/** SHA-256 by the browser; undefined where it offers none, which is so without https. */
export function browserSha256(): Sha256 {
  const { subtle } = crypto;
  if (subtle === undefined) return undefined;
  return async (text) => {
    const sum = await subtle.digest("SHA-256", new TextEncoder().encode(text));
    return [...new Uint8Array(sum)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  };
}
