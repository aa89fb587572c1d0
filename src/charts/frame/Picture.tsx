import type { ReactNode } from "react";
import styles from "./Picture.module.css";
import type { useRoom } from "./useRoom.ts";

interface PictureProps extends Pick<ReturnType<typeof useRoom>, "box" | "square"> {
  readonly children: ReactNode;
}

/** The box of a picture that is as wide as its place allows and has the reader's size of text; `useRoom` measures it. */
export function Picture({ box, square, children }: PictureProps) {
  return (
    <div ref={box} className={styles["picture"]}>
      <span ref={square} className={styles["square"]} />
      {children}
    </div>
  );
}
