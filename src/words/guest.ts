/** Who drove in the driver's place: "Ada driving", or "someone else driving" where no name is known. */
export function sayGuest(name: string): string {
  return name === "" ? "someone else driving" : `${name} driving`;
}
