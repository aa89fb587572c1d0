import type { ReactNode } from "react";

interface NoComboProps {
  /** The address asks for one; else there is none at all. */
  readonly isAsked: boolean;
  /** The heading where there is none at all. */
  readonly title: string;
  /** The way to another one. */
  readonly another: { readonly says: string; readonly href: string };
  /** What to do where there is none at all. */
  readonly children: ReactNode;
}

/** In place of what is told of a combo, where there is no such one. */
export function NoCombo({ isAsked, title, another, children }: NoComboProps) {
  if (!isAsked)
    return (
      <>
        <h1>{title}</h1>
        <p>{children}</p>
      </>
    );
  return (
    <>
      <h1>This combo is not there</h1>
      <p>
        It may have been joined with another one, or belong to another logbook.{" "}
        <a href={another.href}>{another.says}</a>
      </p>
    </>
  );
}
