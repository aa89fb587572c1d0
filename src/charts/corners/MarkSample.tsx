import type { RemarkKind } from "#domain";
import { lapMark } from "../strip/lapMarks.ts";
import { MarkPieces } from "../strip/MarkPieces.tsx";

const RADIUS = 5;

/** The mark that a lap with that remark has in the strip of laps, by itself. */
export function MarkSample({ kind }: { readonly kind: RemarkKind }) {
  const lap = { id: kind, name: "", ms: 1, remarks: [{ kind }] };
  return (
    <svg aria-hidden="true" width={18} height={18}>
      <MarkPieces pieces={lapMark(lap, 8, 9, RADIUS)} />
    </svg>
  );
}
