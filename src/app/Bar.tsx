import { useEffect, useRef, useState } from "react";
import { useLogbook } from "#live";
import { type Address, type Place, places, printAddress, useAddress } from "#state/address.ts";
import { BackupState } from "./BackupState.tsx";
import styles from "./Bar.module.css";

const words: Readonly<Record<Place, string>> = {
  log: "Log",
  review: "Review",
  targets: "Targets",
  rig: "Rig",
  corners: "Corners",
  data: "Data",
};

/** Places that stay on the phone's bar; the others open from More. */
const first: readonly Place[] = ["log", "review", "targets"];

/** The six places: along the top on a desk, along the bottom on a phone. */
export function Bar() {
  const address = useAddress();
  const { entry } = useLogbook();
  const [isOpen, setOpen] = useState(false);
  const bar = useRef<HTMLElement>(null);
  const more = useRef<HTMLButtonElement>(null);

  useEffect(() => {
    if (!isOpen) return;
    const close = (event: Event) => {
      if (event instanceof KeyboardEvent) {
        if (event.key !== "Escape") return;
        more.current?.focus();
      } else if (event.target instanceof Node && bar.current?.contains(event.target)) return;
      setOpen(false);
    };
    window.addEventListener("keydown", close);
    window.addEventListener("pointerdown", close);
    return () => {
      window.removeEventListener("keydown", close);
      window.removeEventListener("pointerdown", close);
    };
  }, [isOpen]);

  const link = (place: Place) => (
    <a
      key={place}
      href={printAddress(beginning(place))}
      aria-current={address.place === place ? "page" : undefined}
      className={first.includes(place) ? styles["link"] : styles["linkMore"]}
      onClick={() => setOpen(false)}
    >
      {words[place]}
    </a>
  );
  const isMoreHere = !first.includes(address.place);
  return (
    <header className={styles["bar"]} ref={bar} data-demo={entry.kind === "demo" || undefined}>
      <span className={styles["title"]}>{entry.kind === "demo" ? "This is the demo" : "Lap Ledger"}</span>
      <nav aria-label="Places" className={styles["places"]} data-open={isOpen}>
        {places.map(link)}
        <button
          type="button"
          ref={more}
          className={styles["more"]}
          aria-expanded={isOpen}
          data-here={isMoreHere}
          onClick={() => setOpen(!isOpen)}
        >
          {isMoreHere ? `More: ${words[address.place]}` : "More"}
        </button>
      </nav>
      <BackupState className={styles["aside"]} isOnData={address.place === "data"} />
    </header>
  );
}

function beginning(place: Place): Address {
  return place === "review" ? { place, period: { kind: "12w" } } : { place };
}
