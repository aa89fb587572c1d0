import { type Config, configure as configureReal } from "@testing-library/react";

/** What a mutant keeps from being shown would be waited for in vain; nothing here takes so long by itself. */
const longestMs = 3000;

/** As asked, but with short waits. */
export function configure(wanted: Partial<Config>): void {
  configureReal({ ...wanted, asyncUtilTimeout: longestMs });
}

configure({});

export * from "@testing-library/react";
