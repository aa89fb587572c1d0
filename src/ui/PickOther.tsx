import { useRef, useState } from "react";
import { Button } from "./Button.tsx";
import { Combobox } from "./Combobox.tsx";
import { Name } from "./Name.tsx";
import styles from "./PickOther.module.css";

/** One that can be looked at instead, and the address it is found at. */
export interface Other {
  readonly id: string;
  readonly name: string;
  /** "last driven Mon 23 Nov 2026" */
  readonly detail: string;
  readonly href: string;
}

interface PickOtherProps {
  /** What the page is of the one looked at, where that is not the place's own name: "Plan". */
  readonly page?: string;
  /** Name of the one looked at, as the page's heading. */
  readonly name: string;
  /** What they are: "Combo". */
  readonly of: string;
  /** On the button that opens the list: "Another combo". */
  readonly opener: string;
  readonly others: readonly Other[];
  /** Picked in the field; in the list it is a link. */
  readonly onPick: (other: Other) => void;
}

const mostInAList = 6;

/** The one looked at, and the way to another one: a list, or where there are many a field to search in. */
export function PickOther({ page, name, of, opener, others, onPick }: PickOtherProps) {
  const [isOpen, setOpen] = useState(false);
  const button = useRef<HTMLButtonElement>(null);
  const close = () => {
    setOpen(false);
    button.current?.focus();
  };
  return (
    <div className={styles["picker"]}>
      <div className={styles["head"]}>
        <h1 className={styles["name"]}>
          {page !== undefined && `${page}: `}
          <Name>{name}</Name>
        </h1>
        {others.length > 0 && (
          <Button ref={button} variant="quiet" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
            {opener}
          </Button>
        )}
      </div>
      {isOpen && (
        <div className={styles["others"]}>
          <Others of={of} others={others} onLeave={close} onPick={onPick} />
        </div>
      )}
    </div>
  );
}

interface OthersProps extends Pick<PickOtherProps, "of" | "others" | "onPick"> {
  readonly onLeave: () => void;
}

function Others({ of, others, onLeave, onPick }: OthersProps) {
  const [text, setText] = useState("");
  if (others.length <= mostInAList)
    return (
      <ul className={styles["list"]}>
        {others.map(({ id, name, detail, href }) => (
          <li key={id}>
            <a href={href} onClick={onLeave} className={styles["link"]}>
              <Name>{name}</Name>
            </a>
            <span className={styles["detail"]}>{detail}</span>
          </li>
        ))}
      </ul>
    );
  return (
    <Combobox
      label={of}
      hint="Type a part of its name, or press Down for the list."
      text={text}
      onText={setText}
      options={others.map(({ id, name, detail }) => ({ id, label: name, detail }))}
      onPick={({ id }) => {
        const picked = others.find((other) => other.id === id);
        onLeave();
        if (picked !== undefined) onPick(picked);
      }}
    />
  );
}
