import { type ComponentType, type LazyExoticComponent, lazy } from "react";
import { loadAnew } from "./loadAnew.ts";

/** A part of the app that is fetched once it is drawn. One that does not come through loads the page anew, once. */
export const laterPart = <P>(load: () => Promise<ComponentType<P>>): LazyExoticComponent<ComponentType<P>> =>
  lazy(() =>
    load().then(
      (component) => ({ default: component }),
      (fault: unknown) => loadAnew(fault),
    ),
  );
