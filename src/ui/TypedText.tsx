import { Name } from "./Name.tsx";

/** A whole form can be long; enough of it to know it by. */
const longest = 160;

/** What was typed and is not stored, shortened. */
export function TypedText({ children: text }: { readonly children: string }) {
  return (
    <strong>
      <Name>{text.length > longest ? `${text.slice(0, longest)}…` : text}</Name>
    </strong>
  );
}
