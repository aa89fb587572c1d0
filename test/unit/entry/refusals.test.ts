import { describe, expect, it } from "vitest";
import { type EntryContext, parseEntry } from "#entry";
import { aContext } from "./aContext.ts";

/** Nothing is known of the combo. */
const nothing: EntryContext = { relativeTo: "lap", displayDecimals: 3, paceTimes: [], isPractice: true };

/** What is refused, from where on, over how many signs, what is wrong with it and what would be right. */
type Refusal = readonly [text: string, at: number, length: number, wrong: string, right: string];

function expectRefused([text, at, length, wrong, right]: Refusal, context: EntryContext): void {
  expect(parseEntry(text, context), text).toEqual({ ok: false, problem: { at, length, wrong, right } });
}

describe("a line that is no lap says what is wrong with which signs, and what would be right", () => {
  it.each<Refusal>([
    ["123456789012", 0, 12, "12 digits are more than a lap time has.", "Write 123456 or 1:23.456."],
    [
      "7",
      0,
      1,
      "One digit alone is not clear: laps a second apart could end like that.",
      "Write seconds with a point, such as 7.0, or the whole time, such as 1:23.456.",
    ],
    [
      "73",
      0,
      2,
      "Two digits alone are not clear: laps a second apart could end like that.",
      "Write seconds with a point, such as 73.0, or the whole time, such as 1:23.456.",
    ],
    [
      "734",
      0,
      3,
      "Three digits alone are not clear: laps a second apart could end like that.",
      "Type the seconds' last digit too, such as 3734, or the whole time, such as 1:23.734.",
    ],
    ["1:61.5", 2, 2, "Seconds go up to 59: 61 is too many.", "Write 2:01.5 if you mean 1 min and 61 s."],
    ["990000", 1, 2, "Seconds go up to 59: 90 is too many.", "Write 1:23.456, for example."],
    ["16612345", 1, 2, "Minutes go up to 59: 66 is too many.", "Write 1:23.456, for example."],
    ["246060000", 4, 2, "Seconds go up to 59: 60 is too many.", "Write 1:23.456, for example."],
    ["24:00:00.1", 0, 10, "“24:00:00.1” is over 24 hours.", "Write a time up to 24 hours, such as 1:23.456."],
    ["240000001", 0, 9, "“240000001” is over 24 hours.", "Write a shorter time."],
    [
      "1:23.4567",
      5,
      4,
      "A time has up to three decimals: “4567” has 4.",
      "Write 1:23.456 if you mean thousandths.",
    ],
    [
      "1:23.45678",
      5,
      5,
      "A time has up to three decimals: “45678” has 5.",
      "Write 1:23.456 if you mean thousandths.",
    ],
    [
      "83.4567",
      3,
      4,
      "A time has up to three decimals: “4567” has 4.",
      "Write 83.456 if you mean thousandths.",
    ],
    [
      "123:1:23.4",
      0,
      3,
      "Hours have up to two digits, not “123”.",
      "Write 1:02:03.4 for an hour, 2 min and 3.4 s.",
    ],
    [
      "1:2:03.4",
      2,
      1,
      "After hours, minutes have two digits and go up to 59: “2” does not fit.",
      "Write 1:02:03.4, for example.",
    ],
    [
      "1:60:03.4",
      2,
      2,
      "After hours, minutes have two digits and go up to 59: “60” does not fit.",
      "Write 1:59:03.4, for example.",
    ],
    [
      "1:123:03",
      2,
      3,
      "After hours, minutes have two digits and go up to 59: “123” does not fit.",
      "Write 1:59:03, for example.",
    ],
    ["00123:23.4", 0, 5, "Minutes have up to four digits, not “00123”.", "Write 1:23.456, for example."],
    ["12345:23.4", 0, 5, "Minutes have up to four digits, not “12345”.", "Write 1:23.456, for example."],
    ["1:2.5", 2, 1, "Seconds after minutes have two digits: “2” has 1.", "Write 1:02.5."],
    ["1:234", 2, 3, "Seconds after minutes have two digits: “234” has 3.", "Write 1:23."],
    ["1:2345.6", 2, 4, "Seconds after minutes have two digits: “2345” has 4.", "Write 1:23.6."],
    ["1:75", 2, 2, "Seconds go up to 59: 75 is too many.", "Write 2:15 if you mean 1 min and 75 s."],
    ["1:75.25", 2, 2, "Seconds go up to 59: 75 is too many.", "Write 2:15.25 if you mean 1 min and 75 s."],
    [
      "1:1:75",
      2,
      1,
      "After hours, minutes have two digits and go up to 59: “1” does not fit.",
      "Write 1:01:75, for example.",
    ],
    [
      "2:03:75.5",
      5,
      2,
      "Seconds go up to 59: 75 is too many.",
      "Write 2:04:15.5 if you mean 03 min and 75 s.",
    ],
    ["0083.4", 0, 4, "“0083” begins with a nought too many.", "Write 83.4, for example."],
    ["083.4", 0, 3, "“083” begins with a nought too many.", "Write 83.4, for example."],
    ["1234567.8", 0, 7, "That is more seconds than 24 hours have.", "Write 83.456, for example."],
    ["0000001.5", 0, 7, "“0000001” begins with a nought too many.", "Write 1.5, for example."],
    [
      "+0.6001",
      3,
      4,
      "A difference has up to three decimals: “6001” has 4.",
      "Write +0.600 if you mean thousandths.",
    ],
    ["+700", 0, 4, "“+700” would be 700 seconds.", "Write +0.700 if you mean a part of a second, or +700.0."],
    [
      "+1234567890",
      0,
      11,
      "“+1234567890” would be very many seconds.",
      "Write +0.123 if you mean a part of a second, or +1234.0.",
    ],
    [
      "+12345.5",
      1,
      5,
      "A difference has up to four digits before its point.",
      "Write the whole time instead, such as 1:23.456.",
    ],
    ["+", 0, 1, "“+” is not a difference in seconds.", "Write +0.6 or -0.25, for example."],
    [
      "-0.60001",
      3,
      5,
      "A difference has up to three decimals: “60001” has 5.",
      "Write -0.600 if you mean thousandths.",
    ],
    ["+1:99", 3, 2, "Seconds go up to 59: 99 is too many.", "Write 2:39 if you mean 1 min and 99 s."],
    [
      "-99",
      0,
      3,
      "“-99” from the lap before, 1:23.700, would leave no time.",
      "Write a smaller difference or the whole time.",
    ],
    [
      "-1:24.0",
      0,
      7,
      "“-1:24.0” from the lap before, 1:23.700, would leave no time.",
      "Write a smaller difference or the whole time.",
    ],
    [
      "+86400.0",
      1,
      5,
      "A difference has up to four digits before its point.",
      "Write the whole time instead, such as 1:23.456.",
    ],
    [
      "1,2,3",
      1,
      1,
      "A comma is read as a decimal mark, so it cannot stand between times.",
      "Separate sectors by spaces: 27.1 31.42 24.9.",
    ],
    [
      "27.1,31.42,24.9",
      4,
      1,
      "A comma is read as a decimal mark, so it cannot stand between times.",
      "Separate sectors by spaces: 27.1 31.42 24.9.",
    ],
    [
      "1:23,456,2",
      4,
      1,
      "A comma is read as a decimal mark, so it cannot stand between times.",
      "Separate sectors by spaces: 27.1 31.42 24.9.",
    ],
    ["1::23", 1, 2, "“::” stands where one sign belongs.", "Write 1:23."],
    ["1:", 2, 0, "After “1:” digits are missing.", "Write 1:23.456."],
    ["1:23.", 5, 0, "After “1:23.” digits are missing.", "Write 1:23."],
    ["..5", 0, 2, "“..” stands where one sign belongs.", "Write 0.5."],
    [":23.4", 0, 0, "Before “:23.4” digits are missing.", "Write 0:23.4."],
    ["1.2.3", 2, 1, "Seconds after minutes have two digits: “2” has 1.", "Write 1:02.3."],
    [
      "27.1 31.42",
      0,
      10,
      "It is not clear whether “27.1 31.42” are laps or sectors.",
      "Write one lap a line, or the lap time and then its sectors: 1:23.420 27.1 31.42 24.9. Where a lap has two sectors, say so once: Corners, Layout, “Sectors the simulator times”.",
    ],
  ])("%s", (...refusal) => expectRefused(refusal, aContext()));
});

describe("where nothing is known of the combo", () => {
  it.each<Refusal>([
    [
      "7",
      0,
      1,
      "One digit alone is not clear: laps a second apart could end like that.",
      "Write seconds with a point, such as 7.0, or the whole time, such as 1:23.456.",
    ],
    [
      "73",
      0,
      2,
      "Two digits alone are not clear: laps a second apart could end like that.",
      "Write seconds with a point, such as 73.0, or the whole time, such as 1:23.456.",
    ],
    [
      "734",
      0,
      3,
      "Three digits alone are not clear: laps a second apart could end like that.",
      "Type the seconds' last digit too, such as 4734, or the whole time, such as 1:24.734.",
    ],
    [
      "3456",
      0,
      4,
      "There is no lap yet that “3456” could be completed from.",
      "Write the whole time, such as 1:23.456.",
    ],
    [
      "12.1 13.2",
      0,
      9,
      "It is not clear whether “12.1 13.2” are laps or sectors.",
      "Write one lap a line, or the lap time and then its sectors: 1:23.420 27.1 31.42 24.9. Where a lap has two sectors, say so once: Corners, Layout, “Sectors the simulator times”.",
    ],
  ])("%s", (...refusal) => expectRefused(refusal, nothing));
});

describe("on a layout with three sectors", () => {
  it.each<Refusal>([
    [
      "27.1 31.42",
      0,
      10,
      "This layout has 3 sectors, and 2 times are typed.",
      "Write one lap time, the 3 sectors, or the lap time and then the 3 sectors. The number is set at Corners, Layout, “Sectors the simulator times”.",
    ],
    ["271000 1 2", 0, 6, "The sector “271000” has no point.", "Write 271.000, for example."],
    [
      "27.1 31.42 2:4:1",
      13,
      1,
      "After hours, minutes have two digits and go up to 59: “4” does not fit.",
      "Write 2:04:01, for example.",
    ],
    [
      "86300.0 200.0 1.0",
      0,
      17,
      "The sectors add up to 24:01:41, which is over 24 hours.",
      "Put right the one that is wrong.",
    ],
  ])("%s", (...refusal) => expectRefused(refusal, aContext({ sectors: 3 })));
});

describe("on a layout without sectors", () => {
  it.each<Refusal>([
    [
      "27.1 31.42",
      0,
      10,
      "This layout has no sectors, and more than one time is typed.",
      "Write one lap a line, such as 1:23.456. If it has sectors, say so once: Corners, Layout, “Sectors the simulator times”.",
    ],
    [
      "27.1 31.42 24.9",
      0,
      15,
      "This layout has no sectors, and more than one time is typed.",
      "Write one lap a line, such as 1:23.456. If it has sectors, say so once: Corners, Layout, “Sectors the simulator times”.",
    ],
  ])("%s", (...refusal) => expectRefused(refusal, aContext({ sectors: 0 })));
});

describe("with a simulator that shows tenths", () => {
  it.each<Refusal>([
    [
      "734",
      0,
      3,
      "Three digits alone are not clear: laps a second apart could end like that.",
      "Write seconds with a point, such as 73.4, or the whole time, such as 1:23.4.",
    ],
    [
      "73",
      0,
      2,
      "Two digits alone are not clear: laps a second apart could end like that.",
      "Write seconds with a point, such as 73.0, or the whole time, such as 1:23.4.",
    ],
    [
      "7",
      0,
      1,
      "One digit alone is not clear: laps a second apart could end like that.",
      "Write seconds with a point, such as 7.0, or the whole time, such as 1:23.4.",
    ],
    [
      "271",
      0,
      3,
      "Three digits alone are not clear: laps a second apart could end like that.",
      "Write seconds with a point, such as 27.1, or the whole time, such as 1:23.4.",
    ],
  ])("%s", (...refusal) => expectRefused(refusal, aContext({ displayDecimals: 1 })));
});

describe("what lies just within the bounds is read", () => {
  it.each<readonly [text: string, ms: number]>([
    ["01:23.4", 83_400],
    ["1:59:59.9", 7_199_900],
    ["24:00:00.0", 86_400_000],
    ["240000000", 86_400_000],
    ["75959000", 28_799_000],
    ["1439:59.9", 86_399_900],
    ["+0.600", 84_300],
    ["+7", 90_700],
    ["+99", 182_700],
    ["+1:02.3", 146_000],
    ["+9999.9", 10_083_600],
  ])("%s", (text, ms) => expect(parseEntry(text, aContext())).toMatchObject({ ok: true, lap: { ms } }));
});
