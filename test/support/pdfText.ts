import { inflateSync } from "node:zlib";

/** A PDF as Chromium prints it: its pages, the size of the first one in points, and its text without spaces. */
export interface PdfRead {
  readonly pages: number;
  readonly size: readonly [width: number, height: number];
  readonly text: string;
}

/**
 * Reads a PDF of the kind Chromium writes: objects in the clear, streams deflated, glyphs as hexadecimal codes that
 * each font's ToUnicode map turns into text (ISO 32000-1, 9.10.3).
 */
export function readPdf(pdf: Buffer): PdfRead {
  const file = pdf.toString("latin1");
  const objects = new Map(
    [...file.matchAll(/(\d+) 0 obj(.*?)endobj/gs)].map(([, number = "", body = ""]) => [number, body]),
  );
  const pages = [...objects.values()].filter((body) => /\/Type\s*\/Page\b(?!s)/.test(body));
  const [, width = "0", height = "0"] = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(pages[0] ?? "") ?? [];
  return {
    pages: pages.length,
    size: [Math.round(Number(width)), Math.round(Number(height))],
    // A space that does not break is drawn by a glyph without a text of its own.
    text: pages
      .map((page) => textOfPage(page, objects))
      .join("")
      .replace(/[\ufffd\ud800-\udfff]/g, ""),
  };
}

function textOfPage(page: string, objects: ReadonlyMap<string, string>): string {
  const fonts = new Map(
    [...page.matchAll(/\/(F\d+) (\d+) 0 R/g)].map(([, name = "", number = ""]) => {
      const [, map = ""] = /\/ToUnicode (\d+) 0 R/.exec(objects.get(number) ?? "") ?? [];
      return [name, unicodeMap(streamOf(objects.get(map)))];
    }),
  );
  const [, contents = ""] = /\/Contents (\d+) 0 R/.exec(page) ?? [];
  let font: ReadonlyMap<string, string> = new Map();
  let text = "";
  for (const [, name, hex] of streamOf(objects.get(contents)).matchAll(/\/(F\d+) [\d.]+ Tf|<([0-9A-F]+)>/g)) {
    if (name !== undefined) font = fonts.get(name) ?? new Map();
    const digits = [...font.keys()][0]?.length ?? 2;
    for (let at = 0; hex !== undefined && at < hex.length; at += digits)
      text += font.get(hex.slice(at, at + digits)) ?? "�";
  }
  return text.replace(/\s/g, "");
}

function streamOf(body = ""): string {
  const [, deflated] = /stream\r?\n(.*?)\r?\nendstream/s.exec(body) ?? [];
  return deflated === undefined ? "" : inflateSync(Buffer.from(deflated, "latin1")).toString("latin1");
}

/** Codes of glyphs, as they are written, and the text each stands for. */
function unicodeMap(map: string): ReadonlyMap<string, string> {
  const codes = new Map<string, string>();
  for (const [, block = ""] of map.matchAll(/beginbfchar(.*?)endbfchar/gs))
    for (const [, code = "", text = ""] of block.matchAll(/<(\w+)> <(\w+)>/g)) codes.set(code, textOf(text));
  for (const [, block = ""] of map.matchAll(/beginbfrange(.*?)endbfrange/gs))
    for (const [, first = "", last = "", text = ""] of block.matchAll(/<(\w+)> <(\w+)> <(\w+)>/g))
      for (let code = Number.parseInt(first, 16); code <= Number.parseInt(last, 16); code++) {
        const moved = Number.parseInt(text, 16) + code - Number.parseInt(first, 16);
        codes.set(code.toString(16).toUpperCase().padStart(first.length, "0"), String.fromCodePoint(moved));
      }
  return codes;
}

function textOf(hex: string): string {
  return (hex.match(/.{4}/g) ?? []).map((unit) => String.fromCharCode(Number.parseInt(unit, 16))).join("");
}
