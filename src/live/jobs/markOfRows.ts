import { textMark } from "#domain";

/** Another text whenever one of the rows changes, comes or goes, also beside one whose stamp lies ahead of all others. */
export function markOfRows(rows: readonly { readonly updatedAt: number }[]): string {
  return `${rows.length}:${textMark(rows.map(({ updatedAt }) => updatedAt).join())}`;
}
