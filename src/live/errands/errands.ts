import { type AfterSession, afterSession } from "./afterSession.ts";
import { type Backup, backup } from "./backup.ts";
import type { Errand } from "./errand.ts";
import { type Keep, keep } from "./keep.ts";
import { type Look, type Looked, look } from "./look.ts";
import { type Merge, type MergeDone, merge } from "./merge.ts";
import { type Part, type PartMade, part } from "./part.ts";
import { type PutDatesRight, putDatesRight } from "./putDatesRight.ts";
import { type Restore, type Restored, restore } from "./restore.ts";
import { type TakeBack, type TakenBackWords, takeBack } from "./takeBack.ts";
import { type TypedInDemo, type TypedInDemoFound, typedInDemo } from "./typedInDemo.ts";

/** What each errand is sent with and brings back. */
interface Errands {
  readonly backup: { readonly details: Backup; readonly result: Uint8Array<ArrayBuffer> };
  readonly look: { readonly details: Look; readonly result: Looked };
  readonly merge: { readonly details: Merge; readonly result: MergeDone };
  readonly takeBack: { readonly details: TakeBack; readonly result: TakenBackWords };
  readonly restore: { readonly details: Restore; readonly result: Restored };
  readonly keep: { readonly details: Keep; readonly result: string };
  readonly part: { readonly details: Part; readonly result: PartMade };
  readonly putDatesRight: { readonly details: PutDatesRight; readonly result: number };
  readonly typedInDemo: { readonly details: TypedInDemo; readonly result: TypedInDemoFound };
  readonly afterSession: { readonly details: AfterSession; readonly result: null };
}

export type ErrandName = keyof Errands;
export type ErrandDetails<E extends ErrandName> = Errands[E]["details"];
export type ErrandResult<E extends ErrandName> = Errands[E]["result"];

export const errands: { readonly [E in ErrandName]: Errand<ErrandDetails<E>, ErrandResult<E>> } = {
  backup,
  look,
  merge,
  takeBack,
  restore,
  keep,
  part,
  putDatesRight,
  typedInDemo,
  afterSession,
};
