import type { MarkPiece } from "./lapMarks.ts";
import styles from "./MarkPieces.module.css";

/** Pieces of laps' marks as paths, at most one a way of drawing and ink; the small strip sets thinner lines. */
export function MarkPieces({ pieces }: { readonly pieces: readonly MarkPiece[] }) {
  return pieces.map(({ how, ink, path }) => (
    <path key={`${how} ${ink}`} d={path} className={styles[how]} data-ink={ink} />
  ));
}
