import { type Address, printAddress } from "#state/address.ts";
import { ViewNav } from "#ui/ViewNav.tsx";

type Part = "one" | "across" | "search" | "statement";

const links: readonly { readonly part: Part; readonly word: string; readonly to: Address }[] = [
  { part: "one", word: "one combo", to: { place: "review", period: { kind: "12w" } } },
  { part: "across", word: "all combos", to: { place: "review", part: "across" } },
  { part: "search", word: "search", to: { place: "review", part: "search", asked: "" } },
  { part: "statement", word: "week", to: { place: "review", part: "statement" } },
];

/** The four views of Review, each with an address of its own. */
export function ReviewNav({ here }: { readonly here: Part | "compare" }) {
  return (
    <ViewNav
      label="Views of the ledger"
      views={links.map(({ part, word, to }) => ({ word, href: printAddress(to), isHere: part === here }))}
    />
  );
}
