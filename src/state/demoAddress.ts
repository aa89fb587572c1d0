import demoAddress from "../../demo-data/demo-logbook.json?url";

/** Where the demo logbook lies beside the app; fetched only when the driver asks for it. */
export { demoAddress };
