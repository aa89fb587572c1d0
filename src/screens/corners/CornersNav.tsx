import { type CornersAddress, printAddress } from "#state/address.ts";
import { ViewNav } from "#ui/ViewNav.tsx";

const links: readonly { readonly part: CornersAddress["part"]; readonly word: string }[] = [
  { part: undefined, word: "what to work on" },
  { part: "review", word: "replay review" },
  { part: "layout", word: "layout and car" },
];

/** The three views of a combo's corners. */
export function CornersNav({ address }: { readonly address: CornersAddress }) {
  const { comboId = "", part, corner } = address;
  return (
    <ViewNav
      label="Views of the corners"
      views={links.map((link) => ({
        word: link.word,
        href: printAddress({ place: "corners", comboId, ...(link.part && { part: link.part }) }),
        isHere: link.part === part && corner === undefined,
      }))}
    />
  );
}
