import { Button } from "./Button.tsx";
import { Name } from "./Name.tsx";
import { Notice } from "./Notice.tsx";

/** A whole form can be long; enough of it to know it by. */
const longest = 160;

/** Something typed in a tab that is gone. */
interface Left {
  readonly key: string;
  readonly text: string;
  readonly when: string | undefined;
}

interface HalfTypedProps<L extends Left> {
  /** A draft with what was left of the same; what has no text is not offered. */
  readonly of: {
    readonly left: readonly L[];
    readonly isEmpty: boolean;
    readonly takeUp: (left: L) => void;
    readonly settleLeft: (left: L) => void;
  };
  /** Whether it can be taken up now without writing over what is typed here; without it, while nothing is. */
  readonly isFree?: boolean;
  readonly onTakeUp?: (left: L) => void;
}

/** What was half typed here in a tab that is gone, to be taken up or let go: never put into a field unasked. */
export function HalfTyped<L extends Left>({
  of,
  isFree = of.isEmpty,
  onTakeUp = of.takeUp,
}: HalfTypedProps<L>) {
  const offered = of.left.filter(({ text }) => text !== "");
  return offered.map((left) => (
    <Notice
      key={left.key}
      actions={
        <>
          {isFree && (
            <Button size="between" onClick={() => onTakeUp(left)}>
              Take it up
            </Button>
          )}
          <Button size="between" onClick={() => of.settleLeft(left)}>
            Let it go
          </Button>
        </>
      }
    >
      <p>
        Half typed here in a tab that is closed{left.when === undefined ? "" : `, ${left.when}`}:{" "}
        <strong>
          <Name>{left.text.length > longest ? `${left.text.slice(0, longest)}…` : left.text}</Name>
        </strong>
        {!isFree && ". It can be taken up once what you are typing now is stored or emptied."}
      </p>
    </Notice>
  ));
}
