import { aboutRemark, type Reading, type Remark, type RemarkKind, remarkKinds } from "#domain";

const names = new Map<string, RemarkKind>(
  remarkKinds.flatMap(({ kind, letter, word }) => [kind, letter, word].map((name) => [name, kind] as const)),
);
const shape = /^(.*?)(?:\s*@\s*|\s+(?:corner|turn)\s+)?(\d{1,3})?$/;
const mostRemarks = 50;
const longest = 1000;

/** Remarks as text of a table: "off@5; cut". */
export function writeRemarks(remarks: readonly Remark[]): string {
  return remarks
    .map(({ kind, corner }) => {
      const { word } = aboutRemark(kind);
      return corner === undefined ? word : `${word}@${corner}`;
    })
    .join("; ");
}

/** Reads remarks of a table: words or letters of the entry line, between them a comma, semicolon, stroke or plus. */
export function readRemarks(cell: string): Reading<{ remarks: readonly Remark[] }> {
  if (cell.length > longest) return refused(cell);
  const remarks: Remark[] = [];
  const parts = cell
    .toLowerCase()
    .split(/[;,/|+\n]+/)
    .map((part) => part.trim())
    .filter(Boolean);
  for (const part of parts.flatMap(words)) {
    const [, name = "", number] = shape.exec(part) ?? [];
    const last = remarks.at(-1);
    const corner = number === undefined || Number(number) === 0 ? undefined : Number(number);
    const kind = names.get(name.trim());
    if (kind !== undefined && (number === undefined || corner !== undefined))
      remarks.push(corner === undefined ? { kind } : { kind, corner });
    else if (/^(corner|turn)$/.test(name.trim()) && corner !== undefined && last && last.corner === undefined)
      remarks[remarks.length - 1] = { ...last, corner };
    else return refused(part);
  }
  if (remarks.length > mostRemarks) return refused(`${remarks.length} remarks`);
  return { ok: true, remarks };
}

/** "off@5 cut" has no sign between its remarks but a space; "slow zone" is one remark. */
function words(part: string): readonly string[] {
  const parts = part.split(/\s+/);
  const isEach = parts.every((word) => names.has(word.replace(/@\d{1,3}$/, "")));
  return isEach ? parts : [part];
}

function refused(part: string): Reading<never> {
  const shown = part.length <= 40 ? part : `${part.slice(0, 40)}…`;
  return {
    ok: false,
    problem: {
      at: 0,
      length: part.length,
      wrong: `“${shown}” is no remark.`,
      right: `Remarks are ${remarkKinds.map(({ word }) => word).join(", ")}; or match the column as a note.`,
    },
  };
}
