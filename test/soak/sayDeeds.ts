/** What was done how often, on the runner's page. */
export function sayDeeds(deeds: Readonly<Record<string, number>>): void {
  for (const [deed, times] of Object.entries(deeds)) process.stdout.write(`${deed}: ${times}\n`);
}
