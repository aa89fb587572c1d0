export { type ApexTimes, apexTimes } from "./apexTimes.ts";
export {
  type AssumedCorner,
  type AssumedFact,
  assumedCorner,
  bendTaken,
  type CornerFacts,
  type SeenGaps,
  straightOf,
} from "./assumedCorner.ts";
export { assumedCar, assumedGrip, assumedWidth } from "./cornerAssumptions.ts";
export { type CornerChange, cornerChange, spanOfChanges } from "./cornerChange.ts";
export { type CornerCost, cornerCost, type DrivenSpeed, type Span } from "./cornerCost.ts";
export { type CornerLine, cornerLine } from "./cornerLine.ts";
export { type CornerPath, cornerPath, type PathArc } from "./cornerPath.ts";
export { type Corner, type Kerbs, nothingUnused } from "./cornerShape.ts";
export { curvedScreen } from "./curvedScreen.ts";
export { type FieldOfView, flatScreen } from "./flatScreen.ts";
export { type ForceSeen, forceSketch, shareOverLimit } from "./forceSketch.ts";
export { gainForPeak } from "./gainForPeak.ts";
export { type GainRange, gainForShare, mostShare } from "./gainForShare.ts";
export { firstGain, mostPointsUp, usualSliderEnd, withinSlider } from "./gainSteps.ts";
export type { Point } from "./halfCorner.ts";
export { headroomDecibels } from "./headroomDecibels.ts";
export { pixelsPerDegree, sharpPixelsPerDegree } from "./pixelsPerDegree.ts";
export { radiusOfSpeed } from "./radiusOfSpeed.ts";
export { rimForce, torqueOfCaution } from "./rimForce.ts";
export { rimTorque } from "./rimTorque.ts";
export { type PlanGlass, type PlanLine, type ScreenPlan, screenPlan } from "./screenPlan.ts";
export { moved, type ScreenSetup } from "./screenSetup.ts";
export { screenSize } from "./screenSize.ts";
export { type ScreenView, screenView } from "./screenView.ts";
export { type ShareRange, shareAtGain } from "./shareAtGain.ts";
export { type ShorterWay, shorterWay } from "./shorterWay.ts";
export { type ThreeScreensView, threeScreens } from "./threeScreens.ts";
export { horizontalFromVertical, verticalFromHorizontal } from "./turnFieldOfView.ts";
export { type AskedView, viewSetting } from "./viewSetting.ts";
export { turningRange } from "./wrongWith.ts";
