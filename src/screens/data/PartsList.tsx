import { useLayoutEffect, useRef, useState } from "react";
import { Button } from "#ui/Button.tsx";
import styles from "./PartsList.module.css";

/** The way to each part of the page it stands on, where that is one column. Buttons, because the hash names the place. */
export function PartsList() {
  const nav = useRef<HTMLElement>(null);
  const [titles, setTitles] = useState<readonly string[]>([]);
  useLayoutEffect(() => {
    const page = nav.current?.parentElement;
    if (!page) return;
    const read = () => {
      const now = headingsOf(page).map(({ textContent }) => textContent);
      setTitles((before) => (before.join("\n") === now.join("\n") ? before : now));
    };
    read();
    // Parts come and go: automatic backup is none of the demo's.
    const observer = new MutationObserver(read);
    observer.observe(page, { childList: true, subtree: true });
    return () => observer.disconnect();
  }, []);

  const goTo = (title: string) => {
    const page = nav.current?.parentElement;
    const heading = page && headingsOf(page).find(({ textContent }) => textContent === title);
    if (!heading) return;
    heading.tabIndex = -1;
    heading.scrollIntoView({ block: "start" });
    heading.focus({ preventScroll: true });
  };
  return (
    <nav ref={nav} aria-label="Parts of this page" className={styles["nav"]}>
      <ul className={styles["list"]}>
        {titles.map((title) => (
          <li key={title}>
            <Button variant="quiet" aria-label={`Go to: ${title}`} onClick={() => goTo(title)}>
              {title}
            </Button>
          </li>
        ))}
      </ul>
    </nav>
  );
}

/** The headings of the parts; a dialog's is none of them. */
function headingsOf(page: HTMLElement): readonly HTMLElement[] {
  return [...page.querySelectorAll("h2")].filter((heading) => heading.closest("dialog") === null);
}
