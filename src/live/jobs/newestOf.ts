/** Another text whenever one of the rows changes, comes or goes. */
export function newestOf(rows: readonly { readonly updatedAt: number }[]): string {
  return `${rows.length}:${Math.max(0, ...rows.map(({ updatedAt }) => updatedAt))}`;
}
