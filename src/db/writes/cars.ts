import type { Car, Id } from "#domain";
import type { Logbook } from "../logbook.ts";
import { overwrittenFields, type Patch } from "../patch.ts";
import type { Change } from "./change.ts";
import { write } from "./write.ts";
import { changeOf } from "./writer.ts";

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
