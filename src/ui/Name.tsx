/** Text someone typed as a name: isolated, so that its writing direction never reorders the figures beside it. */
export function Name({ children }: { readonly children: string }) {
  return <bdi>{children}</bdi>;
}
