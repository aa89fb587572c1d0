import type { Car, Id, Layout } from "#domain";
import type { Logbook } from "../logbook.ts";
import { overwrittenFields, type Patch } from "../patch.ts";
import type { Change } from "./change.ts";
import { write } from "./write.ts";
import { changeOf } from "./writer.ts";

export type LayoutPatch = Patch<Pick<Layout, "sectors" | "length" | "corners">>;

/** Changes what is known of a layout. */
export function editLayout(
  book: Logbook,
  edit: { readonly layoutId: Id; readonly patch: LayoutPatch; readonly expected?: Layout },
): Promise<Change> {
  return write(book, "Layout not changed", async (writer) => {
    const before = await writer.get("layouts", edit.layoutId);
    await writer.patch("layouts", edit.layoutId, edit.patch);
    return changeOf(writer, "Layout changed", overwrittenFields(before, edit.patch, edit.expected));
  });
}

export type CarPatch = Patch<Pick<Car, "width" | "grip" | "braking" | "drive" | "topSpeed">>;

/** Changes what is known of how a car drives; it holds for all its combos. */
export function editCar(
  book: Logbook,
  edit: { readonly carId: Id; readonly patch: CarPatch; readonly expected?: Car },
): Promise<Change> {
  return write(book, "Car not changed", async (writer) => {
    const before = await writer.get("cars", edit.carId);
    await writer.patch("cars", edit.carId, edit.patch);
    return changeOf(writer, "Car changed", overwrittenFields(before, edit.patch, edit.expected));
  });
}
